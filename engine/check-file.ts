import { type Analysis, analyse } from './analysis/analyse.ts';
import { examineTree } from './compile.ts';
import { type CheckedFile, compileFile, type FilePlace } from './compile-file.ts';
import { besideShelf } from './foreign/beside-shelf.ts';
import { inOrder } from './foreign/in-order.ts';
import { openFile } from './foreign/open-file.ts';
import { emptyLibrary } from './library/library.ts';

/** Everything that is wrong with a file, and what the walks through it come to. */
export interface StudiedFile extends CheckedFile {
  /** Null where the file is no tree. */
  readonly analysis: Analysis | null;
}

/** What `compileFile` says of a file, and for a tree besides what only shows on its walks. Takes longer than a keystroke. */
export function checkFile(text: string, place: FilePlace): StudiedFile {
  const { kind, diagnostics } = compileFile(text, place);
  if (kind !== 'tree') return { kind, diagnostics, analysis: null };
  const { path, library = emptyLibrary } = place;
  const { linked } = examineTree(openFile(text), path, besideShelf(library));
  const analysis = linked && analyse(linked);
  return { kind, diagnostics: inOrder([...diagnostics, ...(analysis?.diagnostics ?? [])]), analysis };
}
