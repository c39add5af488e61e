import { basename } from 'node:path';
import { compileBoard } from '../board/compile-board.ts';
import { describe, formatDiagnostic } from '../diagnostics/index.ts';
import type { Library } from '../library/library.ts';
import type { CompiledBoard } from '../model/compiled-board.ts';
import { type Bench, CannotRun } from './bench.ts';
import { readFile } from './read-file.ts';

/** Nobody looks at pictures in a terminal: they count as being there. */
const withoutPictures: Library = { text: () => null, picture: () => 'data:,' };

/** A board sheet from its Markdown. Errors in it end the command. */
export async function loadBoardFile(bench: Bench, path: string): Promise<CompiledBoard> {
  const text = await readFile(bench, path);
  const place = { id: basename(path).replace(/\.md$/, ''), path: basename(path), library: withoutPictures };
  const { board, diagnostics } = compileBoard(text, place);
  if (board !== null) return board;
  const errors = diagnostics.filter((diagnostic) => describe(diagnostic).severity === 'error');
  for (const error of errors) bench.err(`${formatDiagnostic(path, text, error)}\n`);
  throw new CannotRun(`"${path}" has errors and cannot be used: mend them first`);
}
