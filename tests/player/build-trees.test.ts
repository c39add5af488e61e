import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { compiledTrees } from '../../player/build/compiled-trees.ts';

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'trees-'));
  for (const under of ['trees', 'boards', 'common']) mkdirSync(join(folder, under));
  copyFileSync(join(import.meta.dirname, '../helpers/bench-tree.md'), join(folder, 'trees/bench-tree.md'));
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
  expect([...files.keys()]).toEqual(['trees/index.json', 'trees/bench-tree.json', 'boards/index.json']);
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
    join(folder, 'trees/broken.md'),
    '---\nformat: 1\nkind: tree\ntitle: Broken\n---\n\n## Nothing\n\nRead `nothing`.\n',
  );
  const said = spoken();
  expect([...built().keys()]).toEqual(['trees/index.json', 'trees/bench-tree.json', 'boards/index.json']);
  expect(said.some((text) => text.includes('broken.md:') && text.includes('error'))).toBe(true);
  expect(said.at(-1)).toContain('left out');
});

test('compiledTrees() writes board sheets with their pictures in them, and a list with what the opening needs', () => {
  writeFileSync(join(folder, 'boards/k5.svg'), '<svg xmlns="http://www.w3.org/2000/svg"/>');
  writeFileSync(
    join(folder, 'common/rails.md'),
    '---\nformat: 1\nkind: shared\ntitle: Rails\nsettings:\n  bus: { is: Bus clock, unit: MHz, usual: 33 MHz }\n---\n',
  );
  writeFileSync(
    join(folder, 'boards/k5.md'),
    `---
format: 1
kind: board
title: Kestrel K5
boards: [486]
uses: [../common/rails.md]
settings: { bus: 66 MHz }
pictures: { top: { file: k5.svg, is: component side } }
points: { v5: { is: pin 10, picture: top, x: 31 %, y: 62 % } }
---
`,
  );
  const said = spoken();
  const files = built();
  expect(said.filter((text) => text.includes('error'))).toEqual([]);
  expect(files.get('boards/index.json')).toMatchObject({
    boards: [{ id: 'k5', title: 'Kestrel K5', boards: ['486'], points: 1, jumpers: 0 }],
  });
  expect(files.get('boards/k5.json')).toMatchObject({
    kind: 'compiled-board',
    pictures: [{ id: 'top', url: expect.stringContaining('data:image/svg+xml;base64,') }],
  });
});
