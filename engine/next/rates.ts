import type { Conditions } from './arranging.ts';
import type { Costs } from './costs.ts';
import { bitsOf } from './gains.ts';
import type { Item } from './items.ts';
import type { Tables } from './tables.ts';

/** A point on the way to a fault. */
export interface Point {
  readonly shares: Float64Array;
  /** The column in which each item that was taken came out. */
  readonly taken: ReadonlyMap<number, number>;
  readonly conditions: Conditions;
}

export interface Rate {
  readonly item: number;
  /** The item that it is taken for; itself, or one that it opens up. */
  readonly target: number;
  /** Bits for each minute. */
  readonly rate: number;
}

/** A check that tells less, in bits, is not worth a probe. */
export const leastBits = 0.01;

/** Rates that differ by less are equal. */
const hair = 1e-9;

/** The best first; equals in the order of the items. */
export const byRate = (a: Rate, b: Rate): number =>
  Math.abs(a.rate - b.rate) <= hair * Math.max(a.rate, b.rate) ? a.item - b.item : b.rate - a.rate;

/** The rates of the items that can be taken at a point: each for itself, or as the beginning of what it opens up, whichever is more.
 *  Items that tell nothing either way are left out. */
export function ratesAt(
  tables: Tables,
  items: readonly Item[],
  costs: Costs,
  point: Point,
  bits: Float64Array,
): readonly Rate[] {
  const rates = new Map<number, Rate>();
  for (let item = 0; item < items.length; item += 1) {
    if (point.taken.has(item)) continue;
    const chain = chainTo(tables, items, costs, point, bits, item);
    if (chain === null || chain.bits < leastBits) continue;
    const rate = chain.bits / chain.minutes;
    const best = rates.get(chain.first)?.rate ?? 0;
    if (rate > best) rates.set(chain.first, { item: chain.first, target: item, rate });
  }
  return [...rates.values()].toSorted(byRate);
}

interface Chain {
  readonly first: number;
  /** Expected of all that is taken, as long as each comes out so that the next may be taken. */
  readonly bits: number;
  readonly minutes: number;
}

/** What it takes to come to an item, and what is told on the way. Null where something was seen that bars it. */
function chainTo(
  tables: Tables,
  items: readonly Item[],
  costs: Costs,
  { shares, taken, conditions }: Point,
  bits: Float64Array,
  target: number,
): Chain | null {
  const { before, check } = items[target] as Item;
  const left = new Map<number, ReadonlySet<number>>();
  for (const { item, columns } of before) {
    const column = taken.get(item);
    if (column === undefined) left.set(item, columns);
    else if (!columns.has(column)) return null;
  }
  if (left.size === 0) {
    return { first: target, bits: bits[target] as number, minutes: costs.minutes(check, conditions) };
  }
  const way: Way = { shares: Float64Array.from(shares), reach: 1, bits: 0, minutes: 0, conditions };
  let first = -1;
  while (left.size > 0) {
    const item = bestOpen(tables, items, costs, way, left, taken);
    if (item < 0) return null;
    if (first < 0) first = item;
    step(tables, items, costs, way, item, left.get(item));
    left.delete(item);
    if (way.reach < 1e-3) return null;
  }
  step(tables, items, costs, way, target, undefined);
  return { first, bits: way.bits, minutes: way.minutes };
}

interface Way {
  readonly shares: Float64Array;
  /** How likely it is that everything came out as it must. */
  reach: number;
  bits: number;
  minutes: number;
  conditions: Conditions;
}

/** The one that tells most for each minute among those that wait for nothing that is left. */
function bestOpen(
  tables: Tables,
  items: readonly Item[],
  costs: Costs,
  way: Way,
  left: ReadonlyMap<number, ReadonlySet<number>>,
  taken: ReadonlyMap<number, number>,
): number {
  let best = -1;
  let most = -1;
  for (const item of left.keys()) {
    const { before, check } = items[item] as Item;
    const waits = before.some((one) => {
      const column = taken.get(one.item);
      return left.has(one.item) || (column !== undefined && !one.columns.has(column));
    });
    if (waits) continue;
    const rate = bitsOf(tables, way.shares, item) / costs.minutes(check, way.conditions);
    if (rate > most) {
      most = rate;
      best = item;
    }
  }
  return best;
}

/** Takes an item, and goes on where it comes out in one of `columns`. */
function step(
  tables: Tables,
  items: readonly Item[],
  costs: Costs,
  way: Way,
  item: number,
  columns: ReadonlySet<number> | undefined,
): void {
  const { check } = items[item] as Item;
  way.bits += way.reach * bitsOf(tables, way.shares, item);
  way.minutes += way.reach * costs.minutes(check, way.conditions);
  way.conditions = costs.after(check, way.conditions);
  if (columns === undefined) return;
  const { likely, width } = tables;
  const { shares } = way;
  let sum = 0;
  for (let row = 0; row < shares.length; row += 1) {
    let fits = 0;
    for (const column of columns) fits += likely[row * width + column] as number;
    shares[row] = (shares[row] as number) * fits;
    sum += shares[row] as number;
  }
  way.reach *= sum;
  if (sum > 0) for (let row = 0; row < shares.length; row += 1) shares[row] = (shares[row] as number) / sum;
}
