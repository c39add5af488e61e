import { join } from 'node:path';
import { compileTree } from '../../engine/compile.ts';
import { compileSheet } from '../../engine/compile-file.ts';
import { describe } from '../../engine/diagnostics/describe.ts';
import type { Diagnostic } from '../../engine/diagnostics/diagnostic.ts';
import { formatDiagnostic } from '../../engine/diagnostics/format-diagnostic.ts';
import type { Library } from '../../engine/library/library.ts';
import { idOfPath } from '../../engine/library/resolve-path.ts';
import { boardListingOf } from './board-listing-of.ts';
import { diskLibrary } from './disk-library.ts';
import { listingOf } from './listing-of.ts';

/** Files by their path in the built player. */
export type Emitted = ReadonlyMap<string, string>;

interface Compiled<T> {
  readonly value: T | null;
  readonly diagnostics: readonly Diagnostic[];
}

type Compile<T> = (text: string, path: string, library: Library) => Compiled<T>;

/** Every tree and every board sheet of a folder, each with the list of its kind. What has errors is left out and
 *  reported on the terminal; the others stay. */
export function compileLibrary(folder: string): Emitted {
  const library = diskLibrary(folder);
  const all = <T>(under: string, compile: Compile<T>): readonly T[] =>
    library
      .paths()
      .filter((path) => path.startsWith(`${under}/`))
      .flatMap((path) => compileOne(folder, path, library, compile));
  const trees = all('trees', (text, path, beside) => {
    const { tree, diagnostics } = compileTree(text, { id: idOfPath(path), path, library: beside });
    return { value: tree, diagnostics };
  });
  const boards = all('boards', (text, path, beside) => compileSheet(text, { path, library: beside }));
  return new Map([...shelf('trees', trees, listingOf), ...shelf('boards', boards, boardListingOf)]);
}

function shelf<T extends { readonly id: string }>(
  name: string,
  all: readonly T[],
  listing: (one: T) => unknown,
): readonly (readonly [string, string])[] {
  return [
    [`${name}/index.json`, JSON.stringify({ format: 1, [name]: all.map(listing) })],
    ...all.map((one) => [`${name}/${one.id}.json`, JSON.stringify(one)] as const),
  ];
}

function compileOne<T>(folder: string, path: string, library: Library, compile: Compile<T>): readonly T[] {
  const text = library.text(path) ?? '';
  const { value, diagnostics } = compile(text, path, library);
  const told = diagnostics.filter((one) => value === null || describe(one).severity !== 'hint');
  for (const one of told) console.warn(formatDiagnostic(join(folder, path), text, one));
  if (value === null) console.error(`${join(folder, path)}: left out, because it has errors`);
  return value === null ? [] : [value];
}
