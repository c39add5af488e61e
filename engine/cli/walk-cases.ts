import { compileCase, lostText, problemText, runCase, runFaults } from '../cases/index.ts';
import { describe, formatDiagnostic } from '../diagnostics/index.ts';
import { idOfPath } from '../library/resolve-path.ts';
import type { Case } from '../model/case.ts';
import type { CompiledBoard } from '../model/compiled-board.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import { type Bench, CannotRun } from './bench.ts';
import { BenchLibrary, diskPath, libraryPath } from './bench-library.ts';
import { loadBoardFile } from './load-board-file.ts';
import { loadTreeFile } from './load-tree-file.ts';
import { readFile } from './read-file.ts';
import type { Walked } from './walked.ts';

/** Trees and board sheets, each loaded once. */
interface Loaded {
  readonly disk: BenchLibrary;
  tree(path: string): Promise<CompiledTree>;
  board(path: string): Promise<CompiledBoard>;
}

/** Walks cases, every tree they name, and some trees besides. A file is read and a tree loaded once. */
export async function walkCases(
  bench: Bench,
  caseFiles: readonly string[],
  treeFiles: readonly string[],
): Promise<readonly Walked[]> {
  const disk = new BenchLibrary(bench);
  const trees = new Map<string, CompiledTree>();
  const boards = new Map<string, CompiledBoard>();
  const loaded: Loaded = {
    disk,
    tree: (path) => once(trees, path, () => loadTreeFile(bench, path, disk)),
    board: (path) => once(boards, path, () => loadBoardFile(bench, path, disk)),
  };
  const results: Walked[] = [];
  for (const path of caseFiles) results.push(await walkCase(bench, path, loaded));
  for (const path of treeFiles) await loaded.tree(path);
  return [...results, ...[...trees].flatMap(([path, tree]) => faultsOf(path, tree))];
}

async function once<T>(known: Map<string, T>, path: string, load: () => Promise<T>): Promise<T> {
  const found = known.get(path) ?? (await load());
  known.set(path, found);
  return found;
}

async function walkCase(bench: Bench, path: string, loaded: Loaded): Promise<Walked> {
  const read = await readCase(bench, path, loaded.disk);
  const tree = await loaded.tree(diskPath(read.tree));
  const board = read.board === null ? null : await loaded.board(diskPath(read.board));
  const laterTrees = await handedOver(tree, read.tree, loaded);
  const { title, problem, path: sections } = runCase(read, tree, { board, laterTrees });
  return {
    suite: 'cases',
    file: path,
    name: title,
    note: '',
    problem: problem && problemText(problem),
    path: sections.map((section) => section.title),
  };
}

async function readCase(bench: Bench, path: string, disk: BenchLibrary): Promise<Case> {
  const text = await readFile(bench, path);
  const place = { id: idOfPath(libraryPath(path)), path: libraryPath(path) };
  const { value, diagnostics } = await disk.with((library) => compileCase(text, { ...place, library }));
  if (value !== null) return value;
  for (const each of diagnostics) {
    if (describe(each).severity === 'error') bench.err(`${formatDiagnostic(path, text, each)}\n`);
  }
  throw new CannotRun(`"${path}" has errors and cannot be walked: mend them first`);
}

/** The trees that a walk of this one may be handed over to, and those that they hand over to. */
async function handedOver(
  first: CompiledTree,
  path: string,
  loaded: Loaded,
): Promise<readonly CompiledTree[]> {
  const folder = path.slice(0, path.lastIndexOf('/') + 1);
  const found = new Map([[first.id, first]]);
  for (const { sections } of found.values()) {
    for (const section of sections) {
      if (section.kind !== 'hand-over' || found.has(section.tree)) continue;
      found.set(section.tree, await loaded.tree(diskPath(`${folder}${section.tree}.md`)));
    }
  }
  return [...found.values()].slice(1);
}

const faultsOf = (path: string, tree: CompiledTree): readonly Walked[] =>
  runFaults(tree).map(({ fault, walks, more, lost }) => ({
    suite: 'faults',
    file: path,
    name: `${fault.id}: ${fault.is}`,
    note: `${walks} ${walks === 1 ? 'walk' : 'walks'}${more ? ', and there are more ways' : ''}`,
    problem: lost && lostText(lost),
    path: lost?.path.map(({ title }) => title) ?? [],
  }));
