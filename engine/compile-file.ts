import { compileBoard } from './board/compile-board.ts';
import { compileCase } from './cases/compile-case.ts';
import { examine } from './compile.ts';
import type { Diagnostic } from './diagnostics/diagnostic.ts';
import type { Staged } from './diagnostics/staged.ts';
import { besideShelf } from './foreign/beside-shelf.ts';
import { examineProcedure } from './foreign/examine-procedure.ts';
import { examineShared } from './foreign/examine-shared.ts';
import { foreignOf } from './foreign/foreign-of.ts';
import { inOrder, isError } from './foreign/in-order.ts';
import { openFile } from './foreign/open-file.ts';
import { emptyLibrary, type Library } from './library/library.ts';
import { idOfPath } from './library/resolve-path.ts';
import type { LinkedTree } from './link/linked-tree.ts';
import type { CompiledBoard } from './model/compiled-board.ts';
import type { ForeignFacts } from './model/foreign-facts.ts';
import type { ProcedureFacts } from './model/procedure-facts.ts';

/** Where a file stands. */
export interface FilePlace {
  readonly path: string;
  readonly library?: Library;
}

/** A file of shared readings: what it gives to those that use it, as far as it can be understood. */
export const compileShared = (
  text: string,
  { path, library = emptyLibrary }: FilePlace,
): Staged<ForeignFacts> => examineShared(openFile(text), path, besideShelf(library));

/** A procedure by itself: what it takes and how it ends. Null where anything is an error. */
export function compileProcedure(
  text: string,
  { path, library = emptyLibrary }: FilePlace,
): Staged<ProcedureFacts | null> {
  const { value, diagnostics } = examineProcedure(openFile(text), path, besideShelf(library));
  return { value: value?.facts ?? null, diagnostics };
}

/** A board sheet with the files that it uses. */
export function compileSheet(
  text: string,
  { path, library = emptyLibrary }: FilePlace,
): Staged<CompiledBoard | null> {
  const foreign = foreignOf(openFile(text), path, besideShelf(library));
  const place = { id: idOfPath(path), path, library, foreign: foreign.value };
  const { board, diagnostics } = compileBoard(text, place);
  const isSound = !foreign.diagnostics.some(isError);
  return { value: isSound ? board : null, diagnostics: inOrder([...diagnostics, ...foreign.diagnostics]) };
}

type Place = Required<FilePlace>;
interface Checked {
  readonly linked?: LinkedTree | null;
  readonly diagnostics: readonly Diagnostic[];
}
type Check = (text: string, place: Place) => Checked;

/** How a file of each kind is checked: a new kind is a row here. */
const kinds = {
  tree: (text, place) => examine(text, { id: idOfPath(place.path), ...place }),
  procedure: compileProcedure,
  shared: compileShared,
  board: compileSheet,
  case: (text, place) => compileCase(text, { id: idOfPath(place.path), ...place }),
} satisfies Readonly<Record<string, Check>>;

/** What a file of this language can be. */
export type FileKind = keyof typeof kinds;

export interface CheckedFile {
  /** A file that does not say what it is is taken for a tree. */
  readonly kind: FileKind;
  /** Null where it is no tree. */
  readonly linked: LinkedTree | null;
  readonly diagnostics: readonly Diagnostic[];
}

/** Everything that is wrong with a file, whatever its kind. */
export function compileFile(text: string, { path, library = emptyLibrary }: FilePlace): CheckedFile {
  const { kind: said } = openFile(text);
  const kind = said !== null && Object.hasOwn(kinds, said) ? (said as FileKind) : 'tree';
  const check: Check = kinds[kind];
  const { linked = null, diagnostics } = check(text, { path, library });
  return { kind, linked, diagnostics };
}
