import { entropyOf } from '../../suspects/entropy-of.ts';
import { componentsOf } from './components-of.ts';
import { type Ground, silent } from './ground.ts';
import { huffman } from './huffman.ts';
import { informationBound } from './information-bound.ts';
import { minutesWithBefore } from './minutes-with-before.ts';
import { pairBound } from './pair-bound.ts';
import { mostOutcomes, partedBy } from './parted.ts';
import { toldBy } from './told-by.ts';

/** Minutes that no order of the open columns can go below, from a state in which the game is not over: the best of three bounds. Rows of
 *  which some column says nothing are left out where others remain: an order for all of them is one for the others too. */
export function lowerBound(
  ground: Ground,
  rows: Int16Array,
  shares: Float64Array,
  seen: Int8Array,
  open: readonly number[],
): number {
  const kept = rows.filter((row) =>
    open.every((column) => ground.band[row * ground.columns + column] !== silent),
  );
  if (kept.length === rows.length || kept.length < 2) return boundOf(ground, rows, shares, seen, open);
  const part = new Float64Array(kept.length);
  let sum = 0;
  for (let at = 0, to = 0; at < rows.length; at += 1) {
    if (rows[at] !== kept[to]) continue;
    sum += shares[at] as number;
    part[to++] = shares[at] as number;
  }
  return (
    sum *
    boundOf(
      ground,
      kept,
      part.map((share) => share / sum),
      seen,
      open,
    )
  );
}

function boundOf(
  ground: Ground,
  rows: Int16Array,
  shares: Float64Array,
  seen: Int8Array,
  open: readonly number[],
): number {
  const parted = partedBy(ground, rows, seen, open);
  const minutes = minutesWithBefore(ground, seen, open);
  const pairs = pairBound(ground, rows, shares, minutes, parted);
  if (rows.length === 2) return pairs;
  const components = componentsOf(ground, rows, shares, open.length, parted);
  if (components.length < 2) return pairs;
  const code = codeBound(components, mostOutcomes(parted, open.length), minutes);
  const least = Math.max(pairs, code);
  // Of few the information bound is hardly ever the best, and it takes the longest to reckon.
  if (components.length <= few) return least;
  const told = open.map((column, at) => toldBy(ground, rows, shares, column, minutes[at] as number));
  return Math.max(least, informationBound(entropyOf(components), told));
}

const few = 3;

/**
 * Huffman's bound where columns take unequal minutes. A board that is asked d columns is asked d different ones, so it takes
 * P(d), the sum of the d least minutes. P is convex, so each line through two of its points next to each other lies below it:
 *
 *      P(d) ≥ c(k) · d − Σ over j < k (c(k) − c(j))        c(1) ≤ c(2) ≤ … the minutes
 *
 * and the expected d is at least the length of the Huffman code.
 */
function codeBound(weights: readonly number[], outcomes: number, minutes: readonly number[]): number {
  const length = huffman(weights, outcomes);
  const costs = minutes.toSorted((one, other) => one - other);
  let best = 0;
  let less = 0;
  for (let at = 0; at < costs.length; at += 1) {
    const cost = costs[at] as number;
    if (at > 0) less += at * (cost - (costs[at - 1] as number));
    const bound = cost * length - less;
    if (bound < best) break;
    best = bound;
  }
  return best;
}
