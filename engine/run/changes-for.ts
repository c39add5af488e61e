import type { Reading } from '../model/reading.ts';
import type { ConditionChange } from './question.ts';
import type { Session } from './session.ts';

/** The conditions that are not as a reading wants them. */
export function changesFor({ position }: Session, { when }: Reading): readonly ConditionChange[] {
  return Object.entries(when)
    .map(([condition, wanted]) => ({ condition, now: position.conditions[condition] ?? '', wanted }))
    .filter(({ now, wanted }) => now !== wanted);
}
