import { bandsOf, healthyBandsOf } from '../scale/index.ts';
import type { Check } from './check.ts';
import type { Later } from './later.ts';

/** A check with what has to be taken before it. */
export interface Item {
  readonly check: Check;
  readonly before: readonly { readonly item: number; readonly columns: ReadonlySet<number> }[];
}

/** Items that wait for the same. */
interface Family {
  readonly before: Item['before'];
  readonly members: readonly number[];
}

export interface Row {
  readonly items: readonly Item[];
  readonly families: readonly Family[];
}

/** Checks that can be taken now, and after them those that can be taken later, as one row that refers to itself by number. What
 *  must be seen before a later one is among the row; a later one of which something is not falls out. */
export function rowOf(checks: readonly Check[], later: readonly Later[]): Row {
  const reachable = reachableOf(checks, later);
  const all = [...checks, ...reachable.map(({ check }) => check)];
  const places = new Map(all.map(({ reading }, at) => [reading.id, at]));
  const starts: number[] = [];
  let width = 0;
  for (const { reading } of all) {
    starts.push(width);
    width += bandsOf(reading).length;
  }
  const open = checks.map((check) => ({ check, before: [] }));
  const locked = reachable.map(({ check, before }) => ({
    check,
    before: before.map(({ reading, bands }) => {
      const item = places.get(reading) as number;
      const found = (all[item] as Check).reading;
      const wanted = bands ?? healthyBandsOf(found);
      const start = starts[item] as number;
      return {
        item,
        columns: new Set(bandsOf(found).flatMap((band, at) => (wanted.includes(band) ? [start + at] : []))),
      };
    }),
  }));
  const items = [...open, ...locked];
  return { items, families: familiesOf(items) };
}

function familiesOf(items: readonly Item[]): readonly Family[] {
  const families = new Map<string, { readonly before: Item['before']; readonly members: number[] }>();
  for (const [at, { before }] of items.entries()) {
    const key = before
      .map(({ item, columns }) => `${item}:${[...columns]}`)
      .toSorted()
      .join(' ');
    const others = families.get(key);
    if (others === undefined) families.set(key, { before, members: [at] });
    else others.members.push(at);
  }
  return [...families.values()];
}

function reachableOf(checks: readonly Check[], later: readonly Later[]): readonly Later[] {
  let left = later;
  for (;;) {
    const known = new Set([...checks, ...left.map(({ check }) => check)].map(({ reading }) => reading.id));
    const next = left.filter(({ before }) => before.every(({ reading }) => known.has(reading)));
    if (next.length === left.length) return left;
    left = next;
  }
}
