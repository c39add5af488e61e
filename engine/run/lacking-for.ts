import type { Need } from '../model/reading.ts';
import type { Lack } from './question.ts';
import { readingHere } from './reading-here.ts';
import { latest, type Session } from './session.ts';
import { takenFor } from './taken-for.ts';

/** Those of `needs` that are not met, what has to be seen first before what rests on it. */
export function lackingFor(session: Session, needs: readonly Need[]): readonly Lack[] {
  const lacks: Lack[] = [];
  const seen = new Set<string>();
  const visit = (need: Need): void => {
    const reading = readingHere(session, need.reading);
    if (reading === undefined || seen.has(need.reading) || isMet(session, need)) return;
    seen.add(need.reading);
    const take = takenFor(session, reading);
    for (const { onlyIf } of take) onlyIf.forEach(visit);
    const taken = take.map((one) => readingHere(session, one.id) ?? one);
    lacks.push({ need, reading, known: latest(session, reading.id), take: taken });
  };
  needs.forEach(visit);
  return lacks;
}

/** The latest word is inside the bands, of the board as it is: neither stale nor from before the last remedy. */
function isMet(session: Session, { reading, bands }: Need): boolean {
  const known = latest(session, reading);
  return (
    known !== null &&
    !known.stale &&
    known.remedies === session.position.remedies.length &&
    known.bands.length > 0 &&
    known.bands.every((band) => bands.includes(band))
  );
}
