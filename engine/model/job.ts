import type { CompiledBoard } from './compiled-board.ts';
import type { CompiledTree } from './compiled-tree.ts';
import type { Entry } from './entry.ts';

/** One board on the bench: the tree it is walked with and everything that happened. */
export interface Job {
  readonly format: 1;
  readonly kind: 'job';
  readonly id: string;
  /** The tree it was begun with. */
  readonly tree: CompiledTree;
  /** Trees that it was handed over to, or moved to because they are newer; entries name them by digest. */
  readonly laterTrees: readonly CompiledTree[];
  /** The sheet of the board on the bench. */
  readonly board: CompiledBoard | null;
  readonly entries: readonly Entry[];
}
