import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { XmlDocument } from 'libxml2-wasm';
import { describe, expect, test } from 'vitest';
import { fitBoard } from '../../../engine/board/index.ts';
import { compileSheet } from '../../../engine/compile-file.ts';
import { formatDiagnostic } from '../../../engine/diagnostics/index.ts';
import type { Library } from '../../../engine/library/library.ts';
import { shippedTrees } from '../../helpers/shipped-trees.ts';

const root = 'trees';
const shelf: Library = {
  text: (path) => (existsSync(join(root, path)) ? readFileSync(join(root, path), 'utf8') : null),
  picture: (path) =>
    existsSync(join(root, path))
      ? `data:image/svg+xml;base64,${readFileSync(join(root, path)).toString('base64')}`
      : null,
};

const sheets = readdirSync(join(root, 'boards'))
  .filter((name) => name.endsWith('.md'))
  .map((name) => {
    const text = readFileSync(join(root, 'boards', name), 'utf8');
    const { value, diagnostics } = compileSheet(text, { path: `boards/${name}`, library: shelf });
    return { name, text, board: value, diagnostics };
  });

const pictures = readdirSync(join(root, 'boards')).filter((name) => name.endsWith('.svg'));

describe.each(sheets)('the shipped board sheet $name', ({ text, board, diagnostics, name }) => {
  const trees = shippedTrees.flatMap(({ tree }) =>
    tree?.boards.some((one) => board?.boards.includes(one)) ? [tree] : [],
  );

  test('has nothing that the checker would say anything about', () => {
    expect(diagnostics.map((each) => formatDiagnostic(name, text, each))).toEqual([]);
    expect(board).not.toBeNull();
  });

  test('is for at least one shipped tree, and fits every one of them', () => {
    expect(trees.length).toBeGreaterThan(0);
    for (const tree of trees) expect(board && fitBoard(tree, board).misfits).toEqual([]);
  });

  /** What codes and beeps mean is the firmware's, whether a tree asks for them or not. */
  test('moves no limits and shows no point of a reading that no shipped tree of its class has', () => {
    const readings = new Set(trees.flatMap((tree) => tree.readings.map(({ id }) => id)));
    const settings = new Set(trees.flatMap((tree) => tree.settings.map(({ id }) => id)));
    const named = [
      ...(board?.readings ?? []).flatMap(({ reading, measure }) =>
        measure.kind === 'quantity' ? [reading] : [],
      ),
      ...Object.keys(board?.points ?? {}),
      ...(board?.references ?? []).map(({ reading }) => reading),
    ];
    expect([...new Set(named)].filter((id) => !readings.has(id))).toEqual([]);
    const set = [
      ...Object.keys(board?.settings ?? {}),
      ...(board?.tables ?? []).map(({ setting }) => setting),
    ];
    expect(set.filter((id) => !settings.has(id))).toEqual([]);
  });

  test('shows where to touch for at least twenty readings', () => {
    const shown = Object.values(board?.points ?? {}).filter((points) =>
      points.some(({ picture }) => picture !== null),
    );
    expect(shown.length).toBeGreaterThanOrEqual(20);
  });
});

describe.each(pictures)('the picture %s', (name) => {
  const path = join(root, 'boards', name);
  const svg = readFileSync(path, 'utf8');

  test('is light, well-formed, and needs nothing from elsewhere', () => {
    expect(statSync(path).size).toBeLessThan(40 * 1024);
    using document = XmlDocument.fromString(svg);
    expect(document.root.name).toBe('svg');
    expect(svg).not.toMatch(/<script|<foreignObject|\son\w+=|(?:href|url\()\s*=?\s*["']?(?:https?:|\/\/)/i);
    const ids = new Set([...svg.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id));
    const used = [...svg.matchAll(/(?:href="#|url\(#)([^")]+)/g)].map(([, id]) => id);
    expect(used.filter((id) => !ids.has(id))).toEqual([]);
  });
});
