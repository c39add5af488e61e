import { emptyGains, gainsAt, sharesAfter } from './gains.ts';
import { shareOfLargest } from './share-of-largest.ts';
import type { Tables } from './tables.ts';

/** A check that is looked at with what could follow it. */
export interface First {
  readonly check: number;
  readonly bits: number;
  readonly minutes: number;
  /** Minutes of another check after this one; infinite for one that would tell nothing new. */
  readonly minutesThen: (second: number) => number;
}

/** Bands that are less likely are left out. */
const leastShare = 1e-6;
const leastBits = 1e-6;

/**
 * The rate of the best pair that begins with a check, in bits for each minute: (bits of the first + expected bits of the
 * second) ÷ (minutes of the first + expected minutes of the second). The second is chosen for each band by itself, as the one
 * with the most bits for each minute; none follows where a suspect is settled, or nothing is told any more.
 */
export function lookAhead(tables: Tables, bands: Float64Array, first: First, settled: number): number {
  const { start, checks, shares, groups } = tables;
  const after = new Float64Array(shares.length);
  const gains = emptyGains(tables);
  const takes = new Float64Array(checks);
  for (let second = 0; second < checks; second += 1) takes[second] = first.minutesThen(second);
  takes[first.check] = Number.POSITIVE_INFINITY;
  let { bits, minutes } = first;
  const end = start[first.check + 1] as number;
  for (let column = start[first.check] as number; column < end; column += 1) {
    const share = bands[column] as number;
    if (share < leastShare) continue;
    sharesAfter(tables, shares, column, after);
    if (shareOfLargest(after, groups) >= settled) continue;
    gainsAt(tables, after, gains);
    let best = -1;
    let rate = 0;
    for (let second = 0; second < checks; second += 1) {
      const told = gains.bits[second] as number;
      const each = told / (takes[second] as number);
      if (told > leastBits && each > rate) {
        best = second;
        rate = each;
      }
    }
    if (best < 0) continue;
    bits += share * (gains.bits[best] as number);
    minutes += share * (takes[best] as number);
  }
  return bits / minutes;
}
