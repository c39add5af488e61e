import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { compileCase, problemText, runCase } from '../../engine/cases/index.ts';
import { compileSheet } from '../../engine/compile-file.ts';
import { formatDiagnostic } from '../../engine/diagnostics/index.ts';
import type { Library } from '../../engine/library/library.ts';
import { idOfPath } from '../../engine/library/resolve-path.ts';
import { folderLibrary } from '../helpers/folder-library.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';

const root = 'trees';
const library: Library = {
  ...folderLibrary(root),
  picture: (path) =>
    existsSync(`${root}/${path}`)
      ? `data:image/svg+xml;base64,${readFileSync(`${root}/${path}`).toString('base64')}`
      : null,
};
const names = readdirSync(`${root}/cases`).filter((name) => name.endsWith('.md'));
const trees = shippedTrees.flatMap(({ tree }) => tree ?? []);

test('there are at least eight worked cases to try the shipped trees by', () => {
  expect(names.length).toBeGreaterThanOrEqual(8);
});

test.each(names)('the shipped case %s leads where it must', (name) => {
  const text = readFileSync(`${root}/cases/${name}`, 'utf8');
  const { value, diagnostics } = compileCase(text, { id: idOfPath(name), path: `cases/${name}`, library });
  expect(diagnostics.map((each) => formatDiagnostic(name, text, each))).toEqual([]);
  const tree = trees.find(({ id }) => id === idOfPath(value?.tree ?? ''));
  if (value === null || tree === undefined) throw new Error(`expected ${name} to name a shipped tree`);
  const board =
    value.board === null
      ? null
      : compileSheet(library.text(value.board) ?? '', { path: value.board, library }).value;
  const laterTrees = trees.filter(({ id }) => id !== tree.id);
  const { problem } = runCase(value, tree, { board, laterTrees });
  expect(problem && problemText(problem)).toBeNull();
});
