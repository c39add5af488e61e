/** One thing that can be tried. */
export interface Try {
  /** How likely it is that this is it; in any scale. */
  readonly weight: number;
  /** Above 0. */
  readonly minutes: number;
}

/** The order in which to try things of which exactly one is it, so that the expected minutes are least: by weight per minute
 *  (the "P over C" rule of Kadane and Simon). It holds where each try mends one thing only and its minutes do not depend on the order; where tries overlap
 *  it is a good guess and no more.
 *  @returns places in the list, the first to be tried first; equals in their order */
export const repairOrder = (tries: readonly Try[]): readonly number[] =>
  tries
    .map((_, at) => at)
    .toSorted((one, other) => lead(tries[other] as Try, tries[one] as Try) || one - other);

/** Above 0 where the first is worth more for each minute; rounding makes no difference. */
function lead(one: Try, other: Try): number {
  const ahead = one.weight * other.minutes;
  const behind = other.weight * one.minutes;
  return Math.abs(ahead - behind) <= 1e-12 * Math.max(ahead, behind) ? 0 : ahead - behind;
}

/** Expected minutes until the right thing was tried. */
export function minutesInOrder(tries: readonly Try[], order: readonly number[]): number {
  const total = tries.reduce((sum, { weight }) => sum + weight, 0);
  let left = total;
  let minutes = 0;
  for (const at of order) {
    const one = tries[at];
    minutes += left * (one?.minutes ?? 0);
    left -= one?.weight ?? 0;
  }
  return minutes / total;
}
