import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { checkFile } from '../../../engine/check-file.ts';
import { compileTree } from '../../../engine/compile.ts';
import { compileFile } from '../../../engine/compile-file.ts';
import { analysisWords } from '../../../engine/diagnostics/analysis-words.ts';
import type { Diagnostic } from '../../../engine/diagnostics/diagnostic.ts';
import type { Library } from '../../../engine/library/library.ts';
import { fixtureFolder, readInput } from './fixtures.ts';

/** Everything that is said about the file of a fixture, or about a changed text of it; what stands beside it is its library. What
 *  only shows on walks is looked for where the fixture is about that. */
export function compileFixture(code: string, text = readInput(code)): readonly Diagnostic[] {
  const place = { path: 'input.md', library: folder(`${fixtureFolder}/${code}`) };
  // Only where a tree is wanted is a file of another kind wrong.
  if (code === 'not-a-tree') return compileTree(text, { id: 'input', ...place }).diagnostics;
  return (code in analysisWords ? checkFile(text, place) : compileFile(text, place)).diagnostics;
}

const folder = (at: string): Library => ({
  text: (path) => (existsSync(`${at}/${path}`) ? readFileSync(`${at}/${path}`, 'utf8') : null),
  picture: (path) => (existsSync(`${at}/${path}`) ? 'data:image/svg+xml,' : null),
  paths: () => readdirSync(at).filter((name) => name.endsWith('.md')),
});
