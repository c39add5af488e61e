import type { Ground } from './ground.ts';
import { untaken } from './state.ts';

/**
 * Minutes of each open column with its part of what has to be taken before it. What stands before k open columns and tells nothing
 * itself is taken at least as often as each of them, so each can bear the k-th part of it and no order goes below the sum.
 */
export function minutesWithBefore(
  ground: Ground,
  seen: Int8Array,
  open: readonly number[],
): readonly number[] {
  const bearers = new Map<number, number>();
  const telling = new Set(open);
  const before = open.map((column) =>
    (ground.before[column] as readonly number[]).filter(
      (earlier) => seen[earlier] === untaken && !telling.has(earlier),
    ),
  );
  for (const earlier of before.flat()) bearers.set(earlier, (bearers.get(earlier) ?? 0) + 1);
  return open.map((column, at) =>
    (before[at] as readonly number[]).reduce(
      (sum, earlier) => sum + (ground.minutes[earlier] as number) / (bearers.get(earlier) as number),
      ground.minutes[column] as number,
    ),
  );
}
