import type { Reading } from '../../engine/model/reading.ts';
import type { ConditionChange, Lack, Session } from '../../engine/run/index.ts';

interface TakenHere {
  /** Null where nothing of it can be read. */
  readonly take: Reading | null;
  /** What has to be done to the board first. */
  readonly changes: readonly ConditionChange[];
}

/** What is read first where something waits to be seen: the engine lists what rests on nothing else before the rest. */
export function takenHere({ position }: Session, lacking: readonly Lack[]): TakenHere {
  const waiting = new Set(lacking.map(({ reading }) => reading.id));
  const all = lacking.flatMap(({ take }) => take);
  const take =
    all.find(({ id, onlyIf }) => !onlyIf.some(({ reading }) => reading !== id && waiting.has(reading))) ??
    all[0] ??
    null;
  const changes = Object.entries(take?.when ?? {})
    .map(([condition, wanted]) => ({ condition, now: position.conditions[condition] ?? '', wanted }))
    .filter(({ now, wanted }) => now !== wanted);
  return { take, changes };
}
