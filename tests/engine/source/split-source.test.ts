import { describe, expect, test } from 'vitest';
import { openBlock } from '../../../engine/parse/index.ts';
import { splitSource } from '../../../engine/source/split-source.ts';

const split = (text: string) => {
  const { value, diagnostics } = splitSource(text, openBlock);
  return {
    front: value.front?.text ?? null,
    head: value.head.text,
    sections: value.sections.map(({ text: slice }) => slice),
    codes: diagnostics.map(({ code }) => code),
    value,
    diagnostics,
  };
};

const lines = (...all: string[]): string => `${all.join('\n')}\n`;
const tree = lines(
  '---',
  'format: 1',
  'kind: tree',
  '---',
  '',
  '# Title',
  '',
  '## One',
  '',
  'Stop: a.',
  '',
  '## Two',
  '',
  'Stop: b.',
);

describe('splitSource()', () => {
  test('cuts a file into facts, head and sections that add up to it', () => {
    const { front, head, sections, codes } = split(tree);
    expect(front).toBe('format: 1\nkind: tree\n');
    expect(head).toBe('\n# Title\n\n');
    expect(sections).toEqual(['## One\n\nStop: a.\n\n', '## Two\n\nStop: b.\n']);
    expect(codes).toEqual([]);
    expect(`---\n${front}---\n${head}${sections.join('')}`).toBe(tree);
  });

  test.each([
    ['line feeds', tree],
    ['Windows line ends', tree.replaceAll('\n', '\r\n')],
    ['carriage returns', tree.replaceAll('\n', '\r')],
    ['a byte order mark', `\uFEFF${tree}`],
    ['a byte order mark and Windows line ends', `\uFEFF${tree.replaceAll('\n', '\r\n')}`],
  ])('gives offsets in the whole file with %s', (_, text) => {
    const { value, codes } = split(text);
    expect(codes).toEqual([]);
    expect(value.sections).toHaveLength(2);
    for (const slice of [value.front, value.head, ...value.sections]) {
      expect(slice && text.slice(slice.from, slice.from + slice.text.length)).toBe(slice?.text);
    }
    expect(value.front?.text.startsWith('format: 1')).toBe(true);
    expect(value.sections[1]?.text.startsWith('## Two')).toBe(true);
  });

  test('keeps a heading inside a fence in its section, and sees the one below', () => {
    const { sections, codes } = split(
      lines('---', 'a: b', '---', '## One', '```', '## no heading', '```', '## Two'),
    );
    expect(sections).toEqual(['## One\n```\n## no heading\n```\n', '## Two\n']);
    expect(codes).toEqual([]);
  });

  test('reports a fence without an end, and still sees the sections below it', () => {
    const { sections, codes, diagnostics, value } = split(
      lines('---', 'a: b', '---', '## One', '```text', 'x', '## Two', 'y'),
    );
    expect(sections).toEqual(['## One\n```text\nx\n', '## Two\ny\n']);
    expect(codes).toEqual(['block-not-closed']);
    const { span } = diagnostics[0] ?? { span: { from: 0, to: 0 } };
    expect(value.text.slice(span.from, span.to)).toBe('```text');
  });

  test('takes `---` below prose for a rule, not for the end of the facts', () => {
    const { front, head, codes } = split(
      lines('---', 'format: 1', '# a comment', 'kind: tree', '# Title', 'Some prose.', '---', '## One'),
    );
    expect(codes).toEqual(['front-matter-end']);
    expect(front).toBe('format: 1\n# a comment\nkind: tree\n');
    expect(head).toBe('# Title\nSome prose.\n---\n');
  });

  test.each([
    ['no facts at all', '# Title\n', 'nothing', null],
    ['an empty file', '', 'nothing', null],
    ['blank lines above', '\n\n---\na: b\n---\n', 'blank lines', 'a: b\n'],
    ['facts at once', 'a: b\n---\n', 'facts', 'a: b\n'],
    ['a dash that an editor put there', '—\na: b\n---\n', 'another mark', 'a: b\n'],
  ])('reports a missing first mark with %s', (_, text, found, front) => {
    const result = split(text);
    expect(result.diagnostics[0]).toMatchObject({ code: 'front-matter-start', found });
    expect(result.front).toBe(front);
    expect(result.codes).toHaveLength(1);
  });

  test.each([
    ['nothing but facts', '---\na: b\n', 'nothing', 'a: b\n'],
    ['a heading after the facts', '---\na: b\n\n# Title\n', 'nothing', 'a: b\n\n'],
    ['prose after the facts', '---\na: b\nHere it begins, without ado.\n', 'nothing', 'a: b\n'],
    ['a mark that is too long', '---\na: b\n-----\n# Title\n', 'another mark', 'a: b\n'],
  ])('reports a missing last mark with %s', (_, text, found, front) => {
    const result = split(text);
    expect(result.diagnostics[0]).toMatchObject({ code: 'front-matter-end', found });
    expect(result.front).toBe(front);
  });

  test.each([
    ['blank lines', '\n\n---\na: b\n---\n## x\n'],
    ['facts', 'a: b\n---\n## x\n'],
    ['a dash', '—\na: b\n---\n## x\n'],
    ['no last mark', '---\na: b\n\n# T\n## x\n'],
    ['a long last mark', '---\na: b\n-----\n## x\n'],
  ])('offers a fix that mends the marks: %s', (_, text) => {
    const [first] = split(text).diagnostics;
    const [change] = first?.fix?.edits ?? [];
    expect(change).toBeDefined();
    const mended =
      change === undefined ? text : text.slice(0, change.from) + change.insert + text.slice(change.to);
    expect(split(mended).codes).toEqual([]);
  });

  test.each([
    ['a file beyond 1 MB', 'x'.repeat(1024 * 1024 + 1), 'file-too-large'],
    [
      'a section beyond 64 KB',
      `---\na: b\n---\n## One\n${'word '.repeat(14_000)}\n## Two\n`,
      'section-too-large',
    ],
    ['lists 3000 deep', `---\na: b\n---\n## One\n${'- '.repeat(3000)}\n## Two\n`, 'nesting-too-deep'],
    ['nine backticks', `---\na: b\n---\n## One\n${'`'.repeat(9)}\n## Two\n`, 'backticks-too-many'],
    ['20,000 items', `---\na: b\n---\n## One\n${'-\n'.repeat(20_000)}## Two\n`, 'section-too-busy'],
    [
      '20,000 emphasis marks',
      `---\na: b\n---\n## One\n${'*a_ '.repeat(10_000)}\n## Two\n`,
      'section-too-busy',
    ],
    ['260,000 sections', `---\na: b\n---\n${'## \n'.repeat(200_000)}`, 'too-many-sections'],
  ])('refuses %s and keeps what is around it', (_, text, code) => {
    const { codes, sections } = split(text);
    expect(new Set(codes)).toEqual(new Set([code]));
    if (code === 'file-too-large') expect(sections).toEqual([]);
    else if (code !== 'too-many-sections') expect(sections).toEqual(['## One', '## Two\n']);
  });

  test('comes to an end on sections that all open a comment', () => {
    const { codes } = split(`---\na: b\n---\n${'## a\n<!--\n'.repeat(4000)}`);
    expect(new Set(codes)).toEqual(new Set(['block-not-closed']));
  });

  test('takes NUL and lone surrogates as they come', () => {
    const text = lines('---', 'a: \u0000\uD800', '---', '## \uDC00', 'x\u0000');
    const { codes, sections } = split(text);
    expect(codes).toEqual([]);
    expect(sections).toEqual(['## \uDC00\nx\u0000\n']);
  });
});
