import { type Analysis, analyse } from './analysis/analyse.ts';
import { type CheckedFile, compileFile, type FilePlace } from './compile-file.ts';
import { inOrder } from './foreign/in-order.ts';

/** Everything that is wrong with a file, and what the walks through it come to. */
export interface StudiedFile extends CheckedFile {
  /** Null where the file is no tree. */
  readonly analysis: Analysis | null;
}

/** What `compileFile` says of a file, and for a tree besides what only shows on its walks. Takes longer than a keystroke. */
export function checkFile(text: string, place: FilePlace): StudiedFile {
  const file = compileFile(text, place);
  const analysis = file.linked && analyse(file.linked);
  return { ...file, diagnostics: inOrder([...file.diagnostics, ...(analysis?.diagnostics ?? [])]), analysis };
}
