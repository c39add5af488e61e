import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compileTree } from '../../engine/compile.ts';
import { Memory } from '../../engine/foreign/memory.ts';
import { bigTree } from '../helpers/big-tree.ts';
import { folderLibrary } from '../helpers/folder-library.ts';
import { paperLibrary } from '../helpers/paper-library.ts';

const folder = 'tests/fixtures/compile/short-on-a-rail';
const beside = Object.fromEntries(
  (folderLibrary(folder).paths?.() ?? []).map((path) => [path, readFileSync(`${folder}/${path}`, 'utf8')]),
);
const path = 'trees/dead-rail.md';
const trees = [beside[path] ?? '', readFileSync('tests/helpers/bench-tree.md', 'utf8'), bigTree(8)];

const pieces = fc.constantFrom(
  '',
  '\n',
  '\n\n',
  '## ',
  '## Rails\n\n',
  '---\n',
  '- ',
  '→',
  '`',
  'Read `v5`.',
  'otherwise',
  'good',
  'v5',
  'v55',
  ': ',
  '  ',
  '[a](#rails)',
  '[a](memory.md)',
  '[b](nowhere.md)',
  '```\n',
  '> **Warning** Mind.\n',
  'Touch the mains fuse.',
  ' and again',
  '5 V',
  '{',
  '#',
);

/** A text typed over, put in or taken out somewhere. */
const edit = fc.tuple(
  fc.double({ min: 0, max: 1, noNaN: true }),
  fc.nat(12),
  fc.array(pieces, { maxLength: 2 }),
);
type Edit = readonly [number, number, readonly string[]];

const edited = (text: string, [at, length, insert]: Edit): string => {
  const from = Math.floor(at * text.length);
  return text.slice(0, from) + insert.join('') + text.slice(from + length);
};

/** Which file an edit is in: mostly the tree itself. */
const steps = fc.array(fc.tuple(fc.constantFrom(path, path, path, ...Object.keys(beside)), edit), {
  minLength: 1,
  maxLength: 8,
});

describe('compiling with a memory', () => {
  test('gives after every edit what compiling afresh gives', () => {
    fc.assert(
      fc.property(fc.constantFrom(...trees), steps, (start, edits) => {
        const memory = new Memory();
        let files: Record<string, string> = { ...beside, [path]: start };
        compileTree(start, { id: 'x', path, library: paperLibrary(files), memory });
        for (const [file, change] of edits) {
          files = { ...files, [file]: edited(files[file] ?? '', change) };
          const [text, library] = [files[path] ?? '', paperLibrary(files)];
          const kept = compileTree(text, { id: 'x', path, library, memory });
          const afresh = compileTree(text, { id: 'x', path, library });
          expect(JSON.stringify(kept)).toBe(JSON.stringify(afresh));
        }
      }),
      { numRuns: Number(process.env.RUNS ?? 60) },
    );
  });

  test('gives after undoing an edit what it gave before', () => {
    fc.assert(
      fc.property(fc.constantFrom(...trees), edit, (start, change) => {
        const memory = new Memory();
        const library = paperLibrary(beside);
        const place = { id: 'x', path, library, memory };
        const first = JSON.stringify(compileTree(start, place));
        compileTree(edited(start, change), place);
        expect(JSON.stringify(compileTree(start, place))).toBe(first);
      }),
      { numRuns: Number(process.env.RUNS ?? 30) },
    );
  });

  test('reads only the section that was edited', () => {
    const memory = new Memory();
    const text = trees[1] ?? '';
    const before = memory.open(text).body.value.sections.map(({ syntax }) => syntax);
    const at = text.indexOf('\n', text.indexOf('\n## ') + 2);
    const after = memory
      .open(`${text.slice(0, at)}\n\nMore words.${text.slice(at)}`)
      .body.value.sections.map(({ syntax }) => syntax);
    expect(after.map((syntax, index) => syntax === before[index])).toEqual(
      before.map((_, index) => index > 0),
    );
  });
});
