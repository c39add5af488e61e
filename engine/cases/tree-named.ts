import { compileTree } from '../compile.ts';
import { memoryOf } from '../foreign/memory-of.ts';
import type { Library } from '../library/library.ts';
import { idOfPath } from '../library/resolve-path.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';

/** A tree that a case names; null where it has errors. Many cases are about one tree: what is still as it was is not compiled
 *  again for each of them. */
export const treeNamed = (text: string, path: string, library: Library): CompiledTree | null =>
  compileTree(text, { id: idOfPath(path), path, library, memory: memoryOf(path, library) }).tree;
