import type { Library } from '../library/library.ts';
import { Memory } from './memory.ts';

const memories = new WeakMap<Library, Map<string, Memory>>();

/** What was made before of the file at `path` of a library: where many files are about one tree, that is compiled once. */
export function memoryOf(path: string, library: Library): Memory {
  const known = memories.get(library) ?? new Map<string, Memory>();
  memories.set(library, known);
  const memory = known.get(path) ?? new Memory();
  known.set(path, memory);
  return memory;
}
