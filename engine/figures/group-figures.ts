import type { CompiledTree } from '../model/compiled-tree.ts';
import type { GroupFigures } from './figures.ts';
import type { TreeMatrix } from './matrix/tree-matrix.ts';
import { minutesInOrder, repairOrder } from './repair-order.ts';
import { splittingOf } from './testability/splitting.ts';

/** @param groups places of faults that no reading of the tree tells apart */
export function groupFigures(
  tree: CompiledTree,
  groups: readonly (readonly number[])[],
  shares: readonly number[],
  matrices: { readonly taken: TreeMatrix; readonly declared: TreeMatrix },
): readonly GroupFigures[] {
  const homes = new Map(
    tree.sections.flatMap((section) =>
      section.kind === 'fault' ? section.remedies.map(({ fault }) => [fault, section.id] as const) : [],
    ),
  );
  return groups.map((group) => {
    const faults = group.flatMap((place) => tree.faults[place] ?? []);
    const minutesKnown = faults.every(({ minutes }) => minutes !== null);
    const tries = faults.map(({ minutes }, at) => ({
      weight: shares[group[at] ?? -1] ?? 0,
      minutes: minutesKnown ? Math.max(1, minutes ?? 1) : 1,
    }));
    const order = repairOrder(tries);
    const together = new Set(faults.map(({ id }) => homes.get(id))).size === 1;
    return {
      faults: order.flatMap((at) => faults[at]?.id ?? []),
      share: tries.reduce((sum, { weight }) => sum + weight, 0),
      minutes: minutesInOrder(tries, order),
      minutesKnown,
      splitting: together ? [] : splittingOf(tree, group, matrices.taken, matrices.declared),
    };
  });
}
