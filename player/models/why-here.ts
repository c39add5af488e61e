import type { Entry } from '../../engine/model/entry.ts';
import type { Inline } from '../../engine/model/prose.ts';
import type { CheckSection, Outcome } from '../../engine/model/section.ts';
import { latest, nameHere, type Position, type Session } from '../../engine/run/index.ts';
import { bandWords } from './band-words.ts';
import { inSentence } from './in-sentence.ts';
import { stillWrong } from './still-wrong.ts';

/** Why the walk stands at this step: a sentence, and what the author remarked on the way. */
export interface WhyHere {
  readonly text: string;
  readonly remark: readonly Inline[];
  /** A proof failed: it must not be passed over. */
  readonly loud?: boolean;
}

/** Entries that lead to no other step. */
const onTheSpot: ReadonlySet<Entry['kind']> = new Set([
  'note',
  'todo',
  'todo-done',
  'acknowledged',
  'arranged',
  'waiting',
]);

/** Says why this step follows the one before; null at the first step. */
export function whyHere(session: Session): WhyHere | null {
  const { position } = session;
  const before = stepBefore(position);
  if (before?.section == null) return null;
  const last = session.entries.findLast(
    ({ kind }) => kind !== 'note' && kind !== 'todo' && kind !== 'todo-done',
  );
  const came = session.entries.findLast(({ kind }) => !onTheSpot.has(kind));
  if (came?.kind === 'went')
    return { text: `You came here from "${before.section.title}" on purpose`, remark: [] };
  if (came?.kind === 'detoured')
    return { text: `A detour from "${before.section.title}": it is quicker from here`, remark: [] };
  if (came?.kind === 'returned') return { text: 'Back from the detour', remark: [] };
  switch (before.section.kind) {
    case 'check':
      return afterCheck(session, before.section, bandsTaken(session, before, last));
    case 'task':
      return { text: `Done: ${before.section.title}`, remark: [] };
    case 'fault':
      return afterFault(session, before.phase ?? '');
    case 'call':
      return { text: `Following "${before.section.procedureTitle}"`, remark: [] };
    case 'hand-over':
      return { text: `The job came here from "${before.loaded.tree.title}"`, remark: [] };
    case 'stop':
      return null;
  }
}

function stepBefore(position: Position): Position | null {
  let at = position.previous;
  while (at !== null && at.section === position.section && at.phase === position.phase) at = at.previous;
  return at;
}

type BandsOf = (reading: string) => readonly string[];

/** What the readings of the last check were taken to be; none where one could not be read. The last of them
 *  moved the walk on, so that the step before does not hold it yet. */
function bandsTaken(session: Session, before: Position, last: Entry | undefined): BandsOf {
  const unread = last?.kind === 'unread' ? last.reading : null;
  return (reading) =>
    reading === unread ? [] : (before.taken.get(reading) ?? latest(session, reading)?.bands ?? []);
}

function afterCheck(session: Session, section: CheckSection, bandsOf: BandsOf): WhyHere {
  const outcome = outcomeTaken(session, section, bandsOf);
  const named = outcome?.condition.kind === 'bands' ? Object.keys(outcome.condition.bands) : section.readings;
  const clauses = named
    .filter((id) => section.readings.includes(id))
    .map((id) => {
      const bands = bandsOf(id);
      const reading = session.loaded.readings.get(id);
      const is = nameHere(session, id);
      return bands.length === 0 ? `${is}: could not be read` : `${is}: ${bandWords(reading, bands)}`;
    });
  return { text: clauses.length === 0 ? section.title : clauses.join('; '), remark: outcome?.remark ?? [] };
}

/** The line of the check that was taken: the first that leads here and holds for what was read. */
function outcomeTaken(session: Session, section: CheckSection, bandsOf: BandsOf): Outcome | undefined {
  const here = session.position.section?.id;
  const leading = section.outcomes.filter(({ target }) => target === here);
  const unread = section.readings.some((id) => bandsOf(id).length === 0);
  const holds = ({ condition }: Outcome): boolean => {
    if (condition.kind !== 'bands') return condition.kind === 'otherwise' || unread;
    return Object.entries(condition.bands).every(
      ([id, bands]) => !section.readings.includes(id) || bandsOf(id).some((band) => bands.includes(band)),
    );
  };
  return leading.find(holds) ?? leading[0];
}

function afterFault(session: Session, phase: string): WhyHere | null {
  const done = session.position.remedies.at(-1);
  const is = session.loaded.faults.get(done?.fault ?? '')?.is ?? '';
  if (!phase.startsWith('proof') || done === undefined) return null;
  const still = stillWrong(session);
  if (done.effect === 'no effect') {
    const proof = still === null ? `The proof failed: "${is}"` : `${still}: "${is}"`;
    return {
      text: `${proof} was not the cause, or not the only one. It steps aside`,
      remark: [],
      loud: true,
    };
  }
  if (done.effect === 'more is wrong') {
    const proof =
      still === null ? 'Something came right, but not all' : `Something came right, but ${inSentence(still)}`;
    return { text: `${proof}: "${is}" was not the only fault`, remark: [], loud: true };
  }
  return null;
}
