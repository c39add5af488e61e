import type Fraction from 'fraction.js';
import type { End } from '../formula/index.ts';
import type { ResolvedScale } from '../model/resolved-scale.ts';
import { fromStored } from '../quantity/index.ts';

type Limits = Pick<ResolvedScale, 'bands' | 'limits' | 'owners' | 'contradiction'>;

/** Every band that holds a value from the low end to the high end; a missing end is open. One band for one value, unless a
 *  limit beside it is not known.
 *
 *      bands    dead  |  low  ?  good  |  high        ? is a limit that is not known
 *      value                ·                         → low, good
 */
export function bandsBetween(
  low: End | null,
  high: End | null,
  { bands, limits, owners, contradiction }: Limits,
): readonly string[] {
  if (contradiction !== null) return bands;
  let first = 0;
  let last = bands.length - 1;
  for (const [at, limit] of limits.entries()) {
    if (limit === null) continue;
    const value = fromStored(limit);
    // An open end begins just above its value, and ends just below it.
    if (low !== null && isAbove(low, value, owners[at], !low.closed)) first = at + 1;
    if (high !== null && !isAbove(high, value, owners[at], false)) last = Math.min(last, at);
  }
  return bands.slice(first, last + 1);
}

function isAbove(
  { value, closed }: End,
  limit: Fraction,
  owner: 'below' | 'above' | undefined,
  justAbove: boolean,
): boolean {
  const order = value.compare(limit);
  if (order !== 0) return order > 0;
  return closed ? owner === 'above' : justAbove;
}
