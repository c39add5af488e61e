/** A set of combinations of bands, as one set of classes for each name of a scope: the combinations are all
 *  that take one class of each. */
export type Cell = readonly bigint[];

/** A condition over a scope: for some of its places, the classes that fit. */
export type Demand = readonly { readonly place: number; readonly set: bigint }[];

/** Whether every combination of `inner` is one of `outer`. */
export const holds = (outer: Cell, inner: Cell): boolean =>
  inner.every((set, place) => (set & ~(outer[place] ?? 0n)) === 0n);

/** The least cell that holds both. */
export const joined = (one: Cell, other: Cell): Cell => one.map((set, place) => set | (other[place] ?? 0n));

/** The part of `cell` that fits, or null where nothing does. */
export function fitting(cell: Cell, demand: Demand): Cell | null {
  const part = [...cell];
  for (const { place, set } of demand) {
    const both = (part[place] ?? 0n) & set;
    if (both === 0n) return null;
    part[place] = both;
  }
  return part;
}

/** What is left of `cell` without the part that fits, as cells that do not overlap. */
export function without(cell: Cell, demand: Demand): readonly Cell[] {
  if (fitting(cell, demand) === null) return [cell];
  const left: Cell[] = [];
  const rest = [...cell];
  for (const { place, set } of demand) {
    const here = rest[place] ?? 0n;
    const outside = here & ~set;
    if (outside === 0n) continue;
    left.push(rest.map((other, at) => (at === place ? outside : other)));
    rest[place] = here & set;
  }
  return left;
}
