import type { CompiledTree } from '../../engine/model/compiled-tree.ts';

/** A tree's heaviest faults, on boards that have one of them for certain and never slip: the world in which the best order is
 *  reckoned. */
export const withoutSlips = (tree: CompiledTree, faults = tree.faults.length): CompiledTree => ({
  ...tree,
  faults: tree.faults.toSorted((a, b) => b.weight - a.weight).slice(0, faults),
  odds: { slip: 1e-7, unlisted: 1e-7, unlistedNormal: 0.8 },
});
