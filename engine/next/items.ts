import { bandsOf } from '../scale/index.ts';
import type { Check } from './check.ts';
import type { Later } from './later.ts';

/** A check with what has to be taken before it. */
export interface Item {
  readonly check: Check;
  readonly before: readonly { readonly item: number; readonly columns: ReadonlySet<number> }[];
}

/** Checks that can be taken now, and after them those that can be taken later, as one row that refers to itself by number. What
 *  must be seen before a later one is among the row; a later one of which something is not falls out. */
export function itemsOf(checks: readonly Check[], later: readonly Later[]): readonly Item[] {
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
      const wanted = bands ?? (found.normal === 'any' ? bandsOf(found) : found.normal);
      const start = starts[item] as number;
      return {
        item,
        columns: new Set(bandsOf(found).flatMap((band, at) => (wanted.includes(band) ? [start + at] : []))),
      };
    }),
  }));
  return [...open, ...locked];
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
