import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Reading } from '../model/reading.ts';
import { inputsOf } from '../suspects/inputs-of.ts';

/** Readings whose values are drawn together, because what is computed from them has a band of its own to come out in. */
export interface ValueGroup {
  readonly inputs: readonly Reading[];
  /** Each after those that it is computed from. */
  readonly derived: readonly Reading[];
}

const known = new WeakMap<CompiledTree, ReadonlyMap<string, ValueGroup>>();

/** The group of each reading that something is computed from. */
export function valueGroups(tree: CompiledTree): ReadonlyMap<string, ValueGroup> {
  const before = known.get(tree);
  if (before !== undefined) return before;
  const groups = groupsIn(tree);
  known.set(tree, groups);
  return groups;
}

function groupsIn(tree: CompiledTree): ReadonlyMap<string, ValueGroup> {
  const readings = new Map(tree.readings.map((reading) => [reading.id, reading]));
  /** What is joined, directly or through others. */
  const joined = new Map<string, Set<string>>();
  for (const derived of tree.readings.filter(({ from }) => from !== null)) {
    const parts = [derived.id, ...inputsOf(derived, tree)];
    const all = new Set(parts.flatMap((id) => [...(joined.get(id) ?? [id])]));
    for (const id of all) joined.set(id, all);
  }
  const made = new Map<Set<string>, ValueGroup>();
  for (const all of new Set(joined.values())) {
    const members = tree.readings.filter(({ id }) => all.has(id));
    made.set(all, {
      inputs: members.filter(({ from }) => from === null),
      derived: inOrder(
        members.filter(({ from }) => from !== null),
        (id) => readings.get(id)?.from === null || !all.has(id),
        tree,
      ),
    });
  }
  return new Map(
    [...joined].flatMap(([id, all]) => {
      const group = made.get(all);
      return group === undefined ? [] : [[id, group]];
    }),
  );
}

function inOrder(
  derived: readonly Reading[],
  isTaken: (id: string) => boolean,
  tree: CompiledTree,
): readonly Reading[] {
  const sorted: Reading[] = [];
  let left = [...derived];
  while (left.length > 0) {
    const ready = left.filter((reading) =>
      inputsOf(reading, tree).every((id) => isTaken(id) || sorted.some((one) => one.id === id)),
    );
    // A circle is reported elsewhere; here it must only come to an end.
    sorted.push(...(ready.length > 0 ? ready : left));
    left = ready.length > 0 ? left.filter((reading) => !ready.includes(reading)) : [];
  }
  return sorted;
}
