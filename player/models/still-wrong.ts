import { type Known, latest, nameHere, type Session, standing, wordsOn } from '../../engine/run/index.ts';
import { bandWords } from './band-words.ts';

/** What is wrong after the last remedy, as it was read since: `Reference swing is still weak, and 2 more are wrong`; what the fault
 *  was to explain comes first. Null where nothing is. */
export function stillWrong(session: Session): string | null {
  const done = session.position.remedies.at(-1);
  if (done === undefined) return null;
  const shows = session.loaded.faults.get(done.fault)?.shows.map(({ reading }) => reading) ?? [];
  const others = session.loaded.tree.readings.map(({ id }) => id).filter((id) => !shows.includes(id));
  const [first, ...more] = [...shows, ...others].flatMap((id) => {
    const known = latest(session, id);
    return known !== null && isWrongSince(session, known) ? [known] : [];
  });
  if (first === undefined) return null;
  const words = wrongWords(session, first);
  return more.length === 0
    ? words
    : `${words}, and ${more.length} more ${more.length === 1 ? 'is' : 'are'} wrong`;
}

const isWrongSince = (session: Session, known: Known): boolean =>
  known.remedies === session.position.remedies.length &&
  !known.stale &&
  standing(session, known.reading, known) === 'wrong';

function wrongWords(session: Session, { reading, bands, remedies }: Known): string {
  const before = wordsOn(session, reading).findLast((known) => known.remedies < remedies) ?? null;
  const how = before !== null && standing(session, reading, before) === 'normal' ? 'now' : 'still';
  const is = nameHere(session, reading);
  const shows = `${how} ${bandWords(session.loaded.readings.get(reading), bands)}`;
  return is.includes(',') ? `${is}: ${shows}` : `${is} is ${shows}`;
}
