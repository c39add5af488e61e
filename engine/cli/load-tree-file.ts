import { compileTree } from '../compile.ts';
import { describe, formatDiagnostic } from '../diagnostics/index.ts';
import { memoryOf } from '../foreign/memory-of.ts';
import { upgradeTree } from '../job/upgrade-tree.ts';
import { problemsOfCompiledTree } from '../job/validate-job.ts';
import { idOfPath } from '../library/resolve-path.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import { type Bench, CannotRun } from './bench.ts';
import { BenchLibrary, libraryPath } from './bench-library.ts';
import { readFile } from './read-file.ts';

/** A tree from its Markdown with the files that it names, or from compiled JSON. Errors in it end the command.
 *  @param disk where many files are loaded, what was read before is not read again */
export async function loadTreeFile(
  bench: Bench,
  path: string,
  disk = new BenchLibrary(bench),
): Promise<CompiledTree> {
  const text = await readFile(bench, path);
  return path.endsWith('.json') ? fromJson(path, text) : fromMarkdown(bench, path, text, disk);
}

async function fromMarkdown(
  bench: Bench,
  path: string,
  text: string,
  disk: BenchLibrary,
): Promise<CompiledTree> {
  const place = { id: idOfPath(libraryPath(path)), path: libraryPath(path) };
  const { tree, diagnostics } = await disk.with((library) =>
    compileTree(text, { ...place, library, memory: memoryOf(place.path, library) }),
  );
  if (tree !== null) return tree;
  const errors = diagnostics.filter((diagnostic) => describe(diagnostic).severity === 'error');
  for (const error of errors) bench.err(`${formatDiagnostic(path, text, error)}\n`);
  throw new CannotRun(`"${path}" has errors and cannot be walked: mend them first`);
}

function fromJson(path: string, text: string): CompiledTree {
  let data: unknown;
  try {
    data = upgradeTree(JSON.parse(text));
  } catch (error) {
    throw new CannotRun(`"${path}" is not JSON: ${(error as Error).message}`);
  }
  const problems = problemsOfCompiledTree(data);
  if (problems.length > 0)
    throw new CannotRun(`"${path}" is no compiled tree: ${problems.slice(0, 3).join('; ')}`);
  return data as CompiledTree;
}
