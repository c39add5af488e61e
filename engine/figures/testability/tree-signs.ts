import type { CompiledBoard } from '../../model/compiled-board.ts';
import type { CompiledTree } from '../../model/compiled-tree.ts';
import type { Which } from '../matrix/columns-of.ts';
import { type TreeMatrix, treeMatrix } from '../matrix/tree-matrix.ts';
import type { Signs } from './signs.ts';

/** What the faults of a tree show in its readings; each fault for itself. Rows and columns as in the matrix given with it. */
export function treeSigns(
  tree: CompiledTree,
  board: CompiledBoard | null,
  which: Which,
): { readonly signs: Signs; readonly of: TreeMatrix } {
  const of = treeMatrix(tree, board, which, false);
  const normal = of.columns.map(({ reading }, column) => {
    if (reading === null || reading.normal === 'any') return 'any';
    return [...new Set(reading.normal.flatMap((band) => of.bands[column]?.get(band) ?? []))];
  });
  return { signs: { matrix: of.matrix, normal }, of };
}
