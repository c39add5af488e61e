import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect } from 'vitest';
import { checkFile } from '../../engine/check-file.ts';
import type { Library } from '../../engine/library/library.ts';
import { damage, damaged } from './damage.ts';
import { holds } from './mangled-texts.ts';

const root = 'tests/fixtures/compile/short-on-a-rail';
const boards = 'tests/fixtures/diagnostics/jumper-name';

/** A small library with files of every kind that name each other. */
const files: ReadonlyMap<string, string> = new Map([
  ...readdirSync(root, { recursive: true })
    .map((name) => String(name).replaceAll('\\', '/'))
    .filter((name) => name.endsWith('.md'))
    .map((name) => [name, readFileSync(`${root}/${name}`, 'utf8')] as const),
  ['boards/board.md', readFileSync(`${boards}/input.md`, 'utf8')],
  [
    'cases/case.md',
    '---\nformat: 1\nkind: case\ntitle: A job\ntree: ../trees/dead-rail.md\n---\n\n1. `v5` = 0,3 V\n2. back\n\nLeads to [x](../trees/memory.md#first).\n',
  ],
]);

const libraryOf = (texts: ReadonlyMap<string, string>): Library => ({
  text: (path) => texts.get(path) ?? null,
  picture: (path) => (path.endsWith('.svg') ? 'data:image/svg+xml,' : null),
  paths: () => [...texts.keys()],
});

/** Whatever stands in a file and in the files it names: checking it never throws, says the same again, and stays inside the file. */
export function mangledFiles(numRuns: number, seed?: number): void {
  const names = [...files.keys()];
  const damages = fc.array(damage, { maxLength: 6 });
  fc.assert(
    fc.property(
      fc.constantFrom(...names),
      damages,
      fc.constantFrom(...names),
      damages,
      (path, here, other, there) => {
        const texts = new Map(files);
        texts.set(other, damaged(texts.get(other) ?? '', there));
        texts.set(path, damaged(texts.get(path) ?? '', here));
        const text = texts.get(path) ?? '';
        const library = libraryOf(texts);
        const { diagnostics } = checkFile(text, { path, library });
        for (const diagnostic of diagnostics) holds(text, diagnostic);
        expect(checkFile(text, { path, library }).diagnostics).toEqual(diagnostics);
      },
    ),
    { numRuns, ...(seed === undefined ? {} : { seed }) },
  );
}
