import { existsSync, readFileSync } from 'node:fs';
import { compileFile } from '../../../engine/compile-file.ts';
import type { Diagnostic } from '../../../engine/diagnostics/diagnostic.ts';
import type { Library } from '../../../engine/library/library.ts';
import { fixtureFolder, readInput } from './fixtures.ts';

/** Everything that is said about the file of a fixture, or about a changed text of it; what stands beside it is its library. */
export const compileFixture = (code: string, text = readInput(code)): readonly Diagnostic[] =>
  compileFile(text, { path: 'input.md', library: folder(`${fixtureFolder}/${code}`) }).diagnostics;

const folder = (at: string): Library => ({
  text: (path) => (existsSync(`${at}/${path}`) ? readFileSync(`${at}/${path}`, 'utf8') : null),
  picture: (path) => (existsSync(`${at}/${path}`) ? 'data:image/svg+xml,' : null),
});
