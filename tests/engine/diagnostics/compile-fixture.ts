import { existsSync, readFileSync } from 'node:fs';
import { compileBoard } from '../../../engine/board/compile-board.ts';
import { compileTree } from '../../../engine/compile.ts';
import type { Diagnostic } from '../../../engine/diagnostics/diagnostic.ts';
import type { Library } from '../../../engine/library/library.ts';
import { fixtureFolder, readInput } from './fixtures.ts';

type Compile = (
  text: string,
  place: { readonly id: string; readonly path: string; readonly library: Library },
) => { readonly diagnostics: readonly Diagnostic[] };

/** By the kind that the front-matter gives; whatever is no other kind is checked as a tree. */
const compilers: Readonly<Record<string, Compile>> = { board: compileBoard };

/** Everything that is said about the file of a fixture, or about a changed text of it; what stands beside it is its library. */
export function compileFixture(code: string, text = readInput(code)): readonly Diagnostic[] {
  const [, kind = ''] = /^kind: *(\w+)/m.exec(text) ?? [];
  const compile: Compile = compilers[kind] ?? compileTree;
  return compile(text, { id: 'input', path: 'input.md', library: folder(`${fixtureFolder}/${code}`) })
    .diagnostics;
}

const folder = (at: string): Library => ({
  text: (path) => (existsSync(`${at}/${path}`) ? readFileSync(`${at}/${path}`, 'utf8') : null),
  picture: (path) => (existsSync(`${at}/${path}`) ? 'data:image/svg+xml,' : null),
});
