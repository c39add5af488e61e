import { entropyOf } from '../suspects/entropy-of.ts';
import type { Conditions } from './arranging.ts';
import type { Costs } from './costs.ts';
import { bitsOf } from './gains.ts';
import type { Item, Row } from './items.ts';
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

/** The rates of the items that can be taken at a point: each for itself, or as the beginning of what it opens up, whichever is more,
 *  the best first. Items that tell nothing either way are left out. */
export function ratesAt(
  tables: Tables,
  { items, families }: Row,
  costs: Costs,
  point: Point,
  bits: Float64Array,
): readonly Rate[] {
  const rates = new Map<number, Rate>();
  const note = (first: number, target: number, told: number, minutes: number): void => {
    const rate = told / minutes;
    if (told < leastBits || rate <= (rates.get(first)?.rate ?? 0)) return;
    rates.set(first, { item: first, target, rate });
  };
  /** What opens many checks counts for as many of them as make it worth more, as if each told something of its own; no more than is
   *  unknown then. */
  const noteBundle = (way: Way, open: readonly number[]): void => {
    const unknown = entropyOf(way.shares);
    const worth = open
      .map((item) => ({
        item,
        told: bitsOf(tables, way.shares, item),
        minutes: costs.minutes((items[item] as Item).check, way.conditions),
      }))
      .toSorted((a, b) => b.told / b.minutes - a.told / a.minutes);
    let told = 0;
    let { minutes } = way;
    for (const one of worth) {
      const more = Math.min(unknown, told + one.told);
      const longer = minutes + way.reach * one.minutes;
      const isBetter = (way.bits + way.reach * more) / longer > (way.bits + way.reach * told) / minutes;
      if (!isBetter) break;
      told = more;
      minutes = longer;
    }
    const [target] = worth;
    if (target !== undefined) note(way.first, target.item, way.bits + way.reach * told, minutes);
  };
  for (const { before, members } of families) {
    const open = members.filter((item) => !point.taken.has(item));
    if (open.length === 0) continue;
    const way = wayThrough(tables, items, costs, point, before);
    if (way === null) continue;
    if (way.first < 0) {
      for (const item of open) {
        const { check } = items[item] as Item;
        note(item, item, bits[item] as number, costs.minutes(check, point.conditions));
      }
    } else noteBundle(way, open);
  }
  return [...rates.values()].toSorted(byRate);
}

/** Takes all that has to be seen before some items, as long as each comes out so that the next may be taken. Null where something
 *  was seen that bars them. */
function wayThrough(
  tables: Tables,
  items: readonly Item[],
  costs: Costs,
  { shares, taken, conditions }: Point,
  before: Item['before'],
): Way | null {
  const left = new Map<number, ReadonlySet<number>>();
  for (const { item, columns } of before) {
    const column = taken.get(item);
    if (column === undefined) left.set(item, columns);
    else if (!columns.has(column)) return null;
  }
  const from = left.size === 0 ? shares : shares.slice();
  const way: Way = { first: -1, shares: from, reach: 1, bits: 0, minutes: 0, conditions };
  while (left.size > 0) {
    const item = bestOpen(tables, items, costs, way, left, taken);
    if (item < 0) return null;
    if (way.first < 0) way.first = item;
    step(tables, items, costs, way, item, left.get(item) ?? new Set());
    left.delete(item);
    if (way.reach < 1e-3) return null;
  }
  return way;
}

/** What is taken one after the other, and what is expected of it. */
interface Way {
  /** −1 before anything was taken. */
  first: number;
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
  columns: ReadonlySet<number>,
): void {
  const { check } = items[item] as Item;
  way.bits += way.reach * bitsOf(tables, way.shares, item);
  way.minutes += way.reach * costs.minutes(check, way.conditions);
  way.conditions = costs.after(check, way.conditions);
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
