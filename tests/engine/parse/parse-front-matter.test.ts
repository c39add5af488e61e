import { describe, expect, test } from 'vitest';
import type { Path } from '../../../engine/model/front-matter.ts';
import { parseFrontMatter } from '../../../engine/parse/index.ts';

/** Where the facts begin in a made-up file. */
const from = 100;

function parsed(text: string) {
  const { value, diagnostics } = parseFrontMatter({ text, from });
  const marked = (path: Path, part?: 'key' | 'value'): string => {
    const span = value.spanOf(path, part);
    return text.slice(span.from - from, span.to - from);
  };
  return {
    data: JSON.parse(JSON.stringify(value.data)) as unknown,
    raw: value.data,
    marked,
    codes: diagnostics.map(({ code }) => code),
    told: diagnostics.map(({ code, span }) => `${code} ${text.slice(span.from - from, span.to - from)}`),
    diagnostics,
  };
}

/** The text with every fix made that is offered, one round after the other. */
function mended(text: string): string {
  let current = text;
  for (let round = 0; round < 10; round += 1) {
    const fix = parsed(current).diagnostics.find((diagnostic) => diagnostic.fix)?.fix;
    if (fix === undefined) return current;
    for (const edit of [...fix.edits].sort((a, b) => b.from - a.from)) {
      current = current.slice(0, edit.from - from) + edit.insert + current.slice(edit.to - from);
    }
  }
  return current;
}

describe('parseFrontMatter() on sound facts', () => {
  const text = `title: "Board: held"
boards: [386, 486]
readings:
  v5:   # the first
    is: 5 V at
      the slot
    codes: { 00: memory, 1E3: video, 0x10: true, ~: none }
    set: |
      1 V
      single shot
  "v 6": { is: 'it''s' }
faults:
- x
- y: z
`;

  test('keeps every scalar as the text it is', () => {
    expect(parsed(text)).toMatchObject({
      data: {
        title: 'Board: held',
        boards: ['386', '486'],
        readings: {
          v5: {
            is: '5 V at the slot',
            codes: { '00': 'memory', '1E3': 'video', '0x10': 'true', '~': 'none' },
            set: '1 V\nsingle shot\n',
          },
          'v 6': { is: "it's" },
        },
        faults: ['x', { y: 'z' }],
      },
      codes: [],
    });
  });

  test('knows the place of every key and value', () => {
    const { marked } = parsed(text);
    expect(marked(['title'])).toBe('"Board: held"');
    expect(marked(['boards', 1])).toBe('486');
    expect(marked(['readings', 'v5'], 'key')).toBe('v5');
    expect(marked(['readings', 'v5', 'codes', '1E3'], 'key')).toBe('1E3');
    expect(marked(['readings', 'v5', 'codes', '1E3'])).toBe('video');
    expect(marked(['readings', 'v 6', 'is'])).toBe("'it''s'");
    expect(marked(['faults', 1, 'y'], 'key')).toBe('y');
  });

  test('gives the nearest ancestor for what is not there', () => {
    const { marked } = parsed(text);
    expect(marked(['readings', 'v5', 'unit', 'x'], 'key')).toBe('v5');
    expect(marked(['nothing'])).toBe('title: "Board: held"');
  });

  test('gives the same with Windows line ends', () => {
    expect(parsed(text.replaceAll('\n', '\r\n')).data).toEqual(parsed(text).data);
  });

  test('makes objects without a prototype', () => {
    expect(Object.getPrototypeOf(parsed(text).raw)).toBeNull();
  });
});

describe('parseFrontMatter() where YAML stumbles', () => {
  test.each([
    [
      'a leading > is no limit',
      'a:\n  expect: >= 4 V\n  b: c',
      { a: { expect: 'at least 4 V', b: 'c' } },
      ['leading-greater >= 4 V'],
    ],
    [
      'nor without a space',
      'a:\n  expect: >4\n  b: c',
      { a: { expect: 'at least 4', b: 'c' } },
      ['leading-greater >4'],
    ],
    [
      'a comma in braces',
      'a: { expect: 3,3 V, b: c }',
      { a: { expect: '3,3 V', b: 'c' } },
      ['comma-in-braces 3,3 V'],
    ],
    [
      'several commas',
      'a: { is: x, y, z, b: c }',
      { a: { is: 'x, y, z', b: 'c' } },
      ['comma-in-braces x, y, z'],
    ],
    ['no space in braces', 'a: {low:70 %}', { a: { low: '70 %' } }, ['space-after-colon low:']],
    [
      'no space on a line',
      'a:\n  b: c\n  unit:V\n  d: e',
      { a: { b: 'c', unit: 'V', d: 'e' } },
      ['space-after-colon unit:'],
    ],
    ['no space on the only line', 'a:\n  is:x', { a: { is: 'x' } }, ['space-after-colon is:']],
    ['a # that cuts', 'a: Reset #1 of 2', { a: 'Reset' }, ['hash-cuts-text #1 of 2']],
    ['a # that leaves nothing', 'a: #CS', { a: '' }, ['hash-cuts-text #CS']],
    [
      'a # that takes the bracket too',
      'a: { is: Reset #1 }\nb: c',
      { a: { is: 'Reset #1' }, b: 'c' },
      ['needs-quotes Reset #1'],
    ],
    ['a second colon', 'a: Clock: pin 1', { a: 'Clock: pin 1' }, ['needs-quotes Clock: pin 1']],
    ['text behind a quote', 'a: "Swap" it', { a: '"Swap" it' }, ['needs-quotes "Swap" it']],
    ['text behind a bracket', 'a: [pin 1] of it', { a: '[pin 1] of it' }, ['needs-quotes [pin 1] of it']],
    [
      'a leading sign',
      'a: @x\nb: `v`\nc: - 12 V',
      { a: '@x', b: '`v`', c: '- 12 V' },
      ['needs-quotes @x', 'needs-quotes `v`', 'needs-quotes - 12 V'],
    ],
    [
      'marks of YAML',
      'a: *R\nb: &c d\ne: !f',
      { a: '*R', b: '&c d', e: '!f' },
      ['yaml-feature *R', 'yaml-feature &c', 'yaml-feature !f'],
    ],
    ['a merge key', 'a:\n  <<: { b: c }\n  d: e', { a: { d: 'e' } }, ['yaml-feature <<']],
    [
      'special spaces',
      'a:\u00A05 V\nb:\n  -\u2009c',
      { a: '5 V', b: ['c'] },
      ['special-space \u00A0', 'special-space \u2009'],
    ],
    ['tabs', 'a:\n\tb: c\n\td:\n\t\te: f', { a: { b: 'c', d: { e: 'f' } } }, ['tab-indent \t']],
    [
      'a line too far right',
      'a:\n  b:\n    c: d\n     e: f\n    g: h',
      { a: { b: { c: 'd', e: 'f', g: 'h' } } },
      ['bad-indent e: f'],
    ],
    ['a line too far left', 'a:\n  b: c\n d: e', { a: { b: 'c', d: 'e' } }, ['bad-indent d: e']],
    ['an open quote', 'a:\n  b: "c\n  d: e', { a: { b: 'c', d: 'e' } }, ['quote-not-closed "c']],
    [
      'an open bracket',
      'a: { b: c\nd: [e, f',
      { a: { b: 'c' }, d: ['e', 'f'] },
      ['bracket-not-closed { b: c', 'bracket-not-closed [e, f'],
    ],
    ['a line that is no pair', 'a: b\nwords\nc: d', { a: 'b', c: 'd' }, ['not-a-pair words']],
    ['a key twice', 'a:\n  b: c\n  b: d\na: e', { a: { b: 'c' } }, ['duplicate-key b', 'duplicate-key a']],
    ['what is left to the parser', 'a: [b,, c]', { a: ['b', 'c'] }, ['yaml-syntax ,']],
    [
      'a prototype',
      '__proto__: a\nb: { __proto__: { c: d } }',
      { b: {} },
      ['unknown-key __proto__', 'unknown-key __proto__'],
    ],
    [
      'brackets without end',
      `a: ${'['.repeat(60)}\nb: c`,
      { b: 'c' },
      [`facts-too-deep a: ${'['.repeat(60)}`],
    ],
  ])('%s', (_, text, data, told) => {
    const result = parsed(text);
    expect(result.data).toEqual(data);
    expect([...result.told].sort()).toEqual([...told].sort());
    const { codes } = parsed(mended(text));
    const fixable = new Set(result.diagnostics.filter(({ fix }) => fix).map(({ code }) => code));
    expect(codes.filter((code) => fixable.has(code))).toEqual([]);
  });

  test('an error in one entry leaves the others whole', () => {
    const { data, codes } = parsed(
      'readings:\n  a: { b: [c\n  d:\n    is: e\n  f: "g\n  h: i\nfaults:\n  j: k\n',
    );
    expect(data).toEqual({
      readings: { a: { b: ['c'] }, d: { is: 'e' }, f: 'g', h: 'i' },
      faults: { j: 'k' },
    });
    expect(codes).toEqual(['bracket-not-closed', 'bracket-not-closed', 'quote-not-closed']);
  });

  test('an alias bomb is told and comes to nothing', () => {
    const levels = [...'abcdefghi'].map(
      (name, at) => `${'bcdefghij'[at]}: &${'bcdefghij'[at]} [*${name}, *${name}]`,
    );
    const bomb = ['a: &a [x, x]', ...levels];
    const { codes } = parsed(bomb.join('\n'));
    expect(new Set(codes)).toEqual(new Set(['yaml-feature']));
  });

  test('a repaired value is placed where the author wrote it', () => {
    const { marked } = parsed('a:\n  b: Clock: pin 1\n  c: d');
    expect(marked(['a', 'b'])).toBe('Clock: pin 1');
    expect(marked(['a', 'c'])).toBe('d');
  });
});
