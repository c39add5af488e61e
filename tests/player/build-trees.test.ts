import { copyFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { compiledTrees } from '../../player/build/compiled-trees.ts';

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'trees-'));
  copyFileSync(join(import.meta.dirname, '../helpers/bench-tree.md'), join(folder, 'bench-tree.md'));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
  vi.restoreAllMocks();
});

/** The files that a build of the player would get, by path. */
function built(): ReadonlyMap<string, unknown> {
  const files = new Map<string, unknown>();
  const emitFile = ({ fileName, source }: { fileName: string; source: string }) =>
    files.set(fileName, JSON.parse(source));
  const { generateBundle } = compiledTrees({ from: folder });
  (generateBundle as unknown as (this: object) => void).call({ emitFile });
  return files;
}

const spoken = () => {
  const said: string[] = [];
  for (const way of ['warn', 'error'] as const)
    vi.spyOn(console, way).mockImplementation((text) => void said.push(text));
  return said;
};

test('compiledTrees() writes every tree, and a list with what the symptom screen needs', () => {
  spoken();
  const files = built();
  expect([...files.keys()]).toEqual(['trees/index.json', 'trees/bench-tree.json']);
  expect(files.get('trees/index.json')).toMatchObject({
    trees: [
      {
        id: 'bench-tree',
        symptom: 'The fans turn, the screen stays black',
        boards: ['486'],
        readings: 5,
        faults: 5,
      },
    ],
  });
  expect(files.get('trees/bench-tree.json')).toMatchObject({ kind: 'compiled-tree', id: 'bench-tree' });
});

test('compiledTrees() reports a tree with errors, leaves it out and keeps the others', () => {
  writeFileSync(
    join(folder, 'broken.md'),
    '---\nformat: 1\nkind: tree\ntitle: Broken\n---\n\n## Nothing\n\nRead `nothing`.\n',
  );
  const said = spoken();
  expect([...built().keys()]).toEqual(['trees/index.json', 'trees/bench-tree.json']);
  expect(said.some((text) => text.includes('broken.md:') && text.includes('error'))).toBe(true);
  expect(said.at(-1)).toContain('left out');
});
