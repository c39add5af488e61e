import type { CompiledTree } from './compiled-tree.ts';
import type { Entry } from './entry.ts';

/** One board on the bench: the tree it is walked with and everything that happened. */
export interface Job {
  readonly format: 1;
  readonly kind: 'job';
  readonly id: string;
  readonly tree: CompiledTree;
  readonly entries: readonly Entry[];
}
