import { compileTree } from '../compile.ts';
import { Memory } from '../foreign/memory.ts';
import type { Library } from '../library/library.ts';
import { idOfPath } from '../library/resolve-path.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';

const memories = new WeakMap<Library, Map<string, Memory>>();

/** A tree that a case names; null where it has errors. Many cases are about one tree: what is still as it was is not compiled
 *  again for each of them. */
export function treeNamed(text: string, path: string, library: Library): CompiledTree | null {
  const memory = memoryOf(path, library);
  return compileTree(text, { id: idOfPath(path), path, library, memory }).tree;
}

function memoryOf(path: string, library: Library): Memory {
  const known = memories.get(library) ?? new Map<string, Memory>();
  memories.set(library, known);
  const memory = known.get(path) ?? new Memory();
  known.set(path, memory);
  return memory;
}
