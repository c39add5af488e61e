import type { CompiledBoard } from '../model/compiled-board.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import { faultStart } from './fault-start.ts';

/** How likely each fault is once the symptom is seen, in the tree's order; they add up to 1. On a board that belongs to a class the
 *  weights of that class count. */
export function faultShares(tree: CompiledTree, board: CompiledBoard | null): readonly number[] {
  const classOf = tree.boards.find((one) => board?.boards.includes(one));
  const seen = tree.faults.map((fault) => {
    const weight = (classOf === undefined ? undefined : fault.weights[classOf]) ?? fault.weight;
    return Math.max(0, weight) * faultStart(tree, fault).shown;
  });
  const total = seen.reduce((sum, weight) => sum + weight, 0);
  return seen.map((weight) => (total > 0 ? weight / total : 1 / seen.length));
}
