/** Numbers that look random and follow from the seed alone. */
export interface Dice {
  /** From 0 to `below` - 1. */
  upTo(below: number): number;
  chance(share: number): boolean;
  pick<Item>(items: readonly [Item, ...Item[]]): Item;
  /** At least one and at most all of the items, in their order. */
  some<Item>(items: readonly Item[]): readonly Item[];
}

/** mulberry32: 32 bits of state, good enough to shuffle trees. */
export function dice(seed: number): Dice {
  let state = seed | 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const upTo = (below: number): number => Math.floor(next() * below);
  return {
    upTo,
    chance: (share) => next() < share,
    pick: (items) => items[upTo(items.length)] ?? items[0],
    some(items) {
      const chosen = items.filter(() => next() < 0.5);
      return chosen.length > 0 ? chosen : items.slice(0, 1);
    },
  };
}
