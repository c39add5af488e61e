import type { Inline } from '../../engine/model/prose.ts';
import type { CheckSection, Outcome } from '../../engine/model/section.ts';
import { latest, type Position, type Session } from '../../engine/run/index.ts';

/** Why the walk stands at this step: a sentence, and what the author remarked on the way. */
export interface WhyHere {
  readonly text: string;
  readonly remark: readonly Inline[];
}

/** Says why this step follows the one before; null at the first step. */
export function whyHere(session: Session): WhyHere | null {
  const { position } = session;
  const before = stepBefore(position);
  if (before?.section == null) return null;
  const last = session.entries.findLast(
    ({ kind }) => kind !== 'note' && kind !== 'todo' && kind !== 'todo-done',
  );
  if (last?.kind === 'went')
    return { text: `You came here from "${before.section.title}" on purpose`, remark: [] };
  switch (before.section.kind) {
    case 'check':
      return afterCheck(session, before.section);
    case 'task':
      return { text: `Done: ${before.section.title}`, remark: [] };
    case 'fault':
      return afterFault(session, before.phase ?? '');
    case 'stop':
      return null;
  }
}

function stepBefore(position: Position): Position | null {
  let at = position.previous;
  while (at !== null && at.section === position.section && at.phase === position.phase) at = at.previous;
  return at;
}

function afterCheck(session: Session, section: CheckSection): WhyHere {
  const outcome = outcomeTaken(session, section);
  const named = outcome?.condition.kind === 'bands' ? Object.keys(outcome.condition.bands) : section.readings;
  const clauses = named
    .filter((id) => section.readings.includes(id))
    .map((id) => {
      const bands = latest(session, id)?.bands ?? [];
      const is = session.loaded.readings.get(id)?.is ?? id;
      return bands.length === 0 ? `${is}: could not be read` : `${is}: ${bands.join(' or ')}`;
    });
  return {
    text: clauses.length === 0 ? section.title : clauses.join('; '),
    remark: outcome?.remark ?? [],
  };
}

/** The line of the check that was taken: the first that leads here and holds for what was read. */
function outcomeTaken(session: Session, section: CheckSection): Outcome | undefined {
  const here = session.position.section?.id;
  const holds = ({ condition }: Outcome): boolean =>
    condition.kind !== 'bands' ||
    Object.entries(condition.bands).every(([id, bands]) => {
      const known = latest(session, id)?.bands;
      return known === undefined || known.some((band) => bands.includes(band));
    });
  const leading = section.outcomes.filter(({ target }) => target === here);
  return leading.find(holds) ?? leading[0];
}

function afterFault(session: Session, phase: string): WhyHere | null {
  const done = session.position.remedies.at(-1);
  const is = session.loaded.faults.get(done?.fault ?? '')?.is ?? '';
  if (!phase.startsWith('proof') || done === undefined) return null;
  if (done.effect === 'no effect') {
    return {
      text: `The proof failed: "${is}" was not the cause, or not the only one. It steps aside`,
      remark: [],
    };
  }
  if (done.effect === 'more is wrong') {
    return { text: `Something came right, but not all: "${is}" was not the only fault`, remark: [] };
  }
  return null;
}
