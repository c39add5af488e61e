import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { LinkedTree } from '../link/linked-tree.ts';

/** Looks at a whole tree and says what is wrong with it. */
export type Rule = (tree: LinkedTree) => readonly Diagnostic[];
