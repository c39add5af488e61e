import { compileSheet } from '../compile-file.ts';
import { describe, formatDiagnostic } from '../diagnostics/index.ts';
import type { CompiledBoard } from '../model/compiled-board.ts';
import { type Bench, CannotRun } from './bench.ts';
import { BenchLibrary, libraryPath } from './bench-library.ts';
import { readFile } from './read-file.ts';

/** A board sheet from its Markdown with the files and pictures that it names. Errors in it end the command.
 *  @param disk where many files are loaded, what was read before is not read again */
export async function loadBoardFile(
  bench: Bench,
  path: string,
  disk = new BenchLibrary(bench),
): Promise<CompiledBoard> {
  const text = await readFile(bench, path);
  const { value, diagnostics } = await disk.with((library) =>
    compileSheet(text, { path: libraryPath(path), library }),
  );
  if (value !== null) return value;
  const errors = diagnostics.filter((diagnostic) => describe(diagnostic).severity === 'error');
  for (const error of errors) bench.err(`${formatDiagnostic(path, text, error)}\n`);
  throw new CannotRun(`"${path}" has errors and cannot be used: mend them first`);
}
