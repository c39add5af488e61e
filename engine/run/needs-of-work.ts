import type { Need } from '../model/reading.ts';
import { remedyNumber } from './position.ts';
import type { Session } from './session.ts';

/** What must have been seen before the work of a section: a task, or the remedy at hand. */
export function needsOfWork({ loaded, position }: Session): readonly Need[] {
  const { section, phase } = position;
  if (section?.kind === 'task') return section.onlyIf;
  if (section?.kind !== 'fault' || !phase?.startsWith('remedy')) return [];
  const fault = loaded.faults.get(section.remedies[remedyNumber(phase)]?.fault ?? '');
  return [...section.onlyIf, ...(fault?.onlyIf ?? [])];
}
