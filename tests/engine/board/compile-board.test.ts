import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compileBoard } from '../../../engine/board/compile-board.ts';
import { describe as said } from '../../../engine/diagnostics/index.ts';
import type { ForeignFacts } from '../../../engine/model/foreign-facts.ts';
import { noForeignFacts } from '../../../engine/model/foreign-facts.ts';
import type { Reading } from '../../../engine/model/reading.ts';
import type { Setting } from '../../../engine/model/setting.ts';
import {
  allNormal,
  eachBands,
  parseBeeps,
  parseCodes,
  parseExpect,
  parseScale,
} from '../../../engine/scale/index.ts';
import { plainReading } from '../../helpers/plain-reading.ts';
import { quantitySetting, taken } from '../scale/quantity-reading.ts';
import { boardOf, codes, compiled, sheetText } from './sheet.ts';

const volts = taken(parseExpect('5 V ± 5 %', 'V'));
const clock = taken(parseScale('none < 1 MHz < slow < bus * 99 % < good < bus * 101 % < fast', 'MHz'));
const readings: readonly Reading[] = [
  plainReading('v5', { kind: 'quantity', unit: 'V', scale: volts }, ['good']),
  plainReading('cpu_clk', { kind: 'quantity', unit: 'MHz', scale: clock }, ['good']),
  plainReading(
    'post',
    parseCodes([
      { key: '00', band: 'none', means: null },
      { key: '01..1F', band: 'early', means: null },
      { key: '20..7F', band: 'late', means: null },
    ]).measure,
    ['late'],
  ),
  plainReading(
    'beeps',
    parseBeeps([
      { key: 'none', band: 'silent', means: null },
      { key: 'short', band: 'fine', means: null },
    ]).measure,
    ['fine'],
  ),
  plainReading('fan', { kind: 'options', options: [{ name: 'turns', means: null }] }, ['turns']),
  plainReading(
    'rails',
    {
      kind: 'each',
      members: ['A', 'B', 'C'],
      of: { kind: 'quantity', unit: 'V', scale: volts },
      normal: ['good'],
      bands: eachBands(3, volts.bands, ['good']),
    },
    [allNormal],
  ),
];
const settings: readonly Setting[] = [
  quantitySetting('bus', 'MHz', '33 MHz'),
  {
    kind: 'options',
    id: 'cpu',
    is: 'CPU',
    options: ['dx', 'sx'].map((name) => ({ name, means: null })),
    usual: 'dx',
  },
];
const foreign: ForeignFacts = { ...noForeignFacts, readings, settings };

/** The codes that are told of a sheet with these facts. */
const told = (facts: string): readonly string[] => codes(compiled(facts, foreign).diagnostics);

/** What is told of the limits of one reading; it stands for itself that a source is given. */
const ofReading = (reading: string, other: string): readonly string[] =>
  told(`readings:\n  ${reading}: { ${other}, source: common practice }`);

const jumpers = `
jumpers:
  JP1: { is: Bus clock, positions: [1-2, 2-3] }
tables:
  bus:
    JP1 1-2: 25 MHz
    JP1 2-3: 50 MHz`;

describe('compileBoard()', () => {
  test('makes a plain value of everything on the sheet', () => {
    const board = boardOf(
      `
settings: { bus: 40 MHz, cpu: sx }${jumpers}
fitting: { memory: { is: Memory, sockets: [A, B], together: [[A, B]] } }
readings:
  v5: { expect: 5 V ± 3 %, source: legend }
pictures:
  top: { file: ../pictures/top.svg, is: component side }
  back: { file: back.png, is: solder side, mirrored: yes }
points:
  v5: { is: contact 10, picture: top, x: 31 %, y: 62.5 % }
  cpu_clk:
    - { is: CLK, picture: back, x: 0 %, y: 100 % }
    - { is: ground }
references:
  - { date: 2024-02-29, instrument: meter, readings: { v5: 5.02 V, cpu_clk: 33 MHz } }`,
      foreign,
    );
    expect(board).toMatchObject({
      format: 1,
      kind: 'compiled-board',
      id: 'plover-p2',
      title: 'Plover P2',
      boards: ['486'],
      settings: { bus: { value: '40000000', unit: 'MHz' }, cpu: 'sx' },
      jumpers: [{ id: 'JP1', is: 'Bus clock', positions: ['1-2', '2-3'] }],
      tables: [
        {
          setting: 'bus',
          rows: [
            { at: { JP1: '1-2' }, value: { value: '25000000', unit: 'MHz' } },
            { at: { JP1: '2-3' }, value: { value: '50000000', unit: 'MHz' } },
          ],
        },
      ],
      fittings: [{ id: 'memory', is: 'Memory', sockets: ['A', 'B'], together: [['A', 'B']] }],
      readings: [{ reading: 'v5', measure: { kind: 'quantity', unit: 'V' }, source: 'legend' }],
      pictures: [
        { id: 'top', is: 'component side', url: 'data:,pictures/top.svg', mirrored: false },
        { id: 'back', is: 'solder side', url: 'data:,boards/back.png', mirrored: true },
      ],
      points: {
        v5: [{ is: 'contact 10', picture: 'top', x: 0.31, y: 0.625 }],
        cpu_clk: [
          { is: 'CLK', picture: 'back', x: 0, y: 1 },
          { is: 'ground', picture: null, x: 0, y: 0 },
        ],
      },
      references: [
        { reading: 'v5', value: { value: '251/50', unit: 'V' }, date: '2024-02-29', instrument: 'meter' },
        { reading: 'cpu_clk', value: { value: '33000000', unit: 'MHz' } },
      ],
    });
    expect(board.digest).toMatch(/^[0-9a-f]{64}$/);
  });

  test('gives a digest that words, pictures and points do not change, and limits do', () => {
    const facts = (limits: string, words: string) => `
readings: { v5: { expect: ${limits}, source: ${words} } }
points: { v5: { is: ${words} } }`;
    const digest = (limits: string, words: string) => boardOf(facts(limits, words), foreign).digest;
    expect(digest('5 V ± 3 %', 'one')).toBe(digest('5 V ± 3 %', 'other'));
    expect(digest('5 V ± 3 %', 'one')).not.toBe(digest('5 V ± 4 %', 'one'));
  });

  test('moves limits and codes, and never bands', () => {
    expect(ofReading('v5', 'expect: 5 V ± 3 %')).toEqual([]);
    expect(ofReading('v5', 'scale: low < 4.9 V < good < 5.1 V < high')).toEqual([]);
    expect(ofReading('v5', 'expect: at least 4.9 V')).toEqual(['sheet-bands-differ']);
    expect(ofReading('v5', 'scale: high < 4.9 V < good < 5.1 V < low')).toEqual(['sheet-bands-differ']);
    expect(ofReading('post', 'codes: { 0000: none, 0001..FFFF: late }')).toEqual([]);
    expect(ofReading('post', 'codes: { 00: none, 01: video }')).toEqual(['sheet-bands-differ']);
    expect(ofReading('beeps', 'beeps: { long short: fine }')).toEqual([]);
    expect(ofReading('rails', 'expect: 5 V ± 3 %')).toEqual([]);
    expect(ofReading('rails', 'scale: dead < 1 V < good')).toEqual(['sheet-bands-differ']);
  });

  test('keeps every band of a table of codes that uses fewer', () => {
    const { readings: found } = boardOf(
      'readings: { post: { codes: { 01..FF: early }, source: x } }',
      foreign,
    );
    expect(found[0]?.measure).toMatchObject({ bands: ['none', 'early', 'late', 'other'] });
  });

  test('refuses another measure than the reading has', () => {
    expect(ofReading('v5', 'codes: { 00: low }')).toEqual(['sheet-measure-differs']);
    expect(ofReading('post', 'expect: 5 V ± 3 %')).toEqual(['sheet-measure-differs']);
    expect(ofReading('fan', 'expect: 5 V ± 3 %')).toEqual(['sheet-measure-differs']);
    expect(ofReading('v5', 'expect: 5 MHz ± 3 %')).toEqual(['wrong-unit']);
    expect(ofReading('v5', 'options: [a, b]')).toEqual(['sheet-limits', 'unknown-key']);
  });

  test('takes the unit of a reading that no shared file declares from what is written', () => {
    expect(ofReading('v33', 'expect: 3.3 V ± 3 %')).toEqual([]);
    expect(ofReading('pci', 'expect: bus / 2 ± 1 %')).toEqual([]);
    expect(ofReading('odd', 'expect: 3 ± 1')).toEqual(['sheet-unit']);
    expect(ofReading('odd', 'unit: V, expect: 3 V ± 0.1 V')).toEqual([]);
  });

  test('checks the order of limits at every value of the jumper table', () => {
    const limits =
      'readings: { cpu_clk: { scale: none < 1 MHz < slow < 30 MHz < good < bus < fast, source: x } }';
    expect(told(limits)).toEqual([]);
    const [problem] = compiled(`${limits}${jumpers}`, foreign).diagnostics;
    expect(problem).toMatchObject({ code: 'limits-order', when: 'bus = 25 MHz' });
  });

  test('knows settings by the values that the sheet itself gives', () => {
    const sheet = (limit: string) => `
settings: { fsb: 66 MHz, rail: dual }
readings: { cpu_clk: { scale: none < 1 MHz < slow < ${limit} < good < 90 MHz < fast, source: x } }`;
    expect(codes(compiled(sheet('fsb')).diagnostics)).toEqual([]);
    expect(codes(compiled(sheet('fsp')).diagnostics)).toEqual(['unknown-name']);
    expect(codes(compiled(sheet('rail')).diagnostics)).toEqual(['not-a-number']);
  });

  test('reads the values of settings as their shared file declares them', () => {
    expect(told('settings: { bus: 40 }')).toEqual([]);
    expect(told('settings: { bus: 40 V }')).toEqual(['wrong-unit']);
    expect(told('settings: { bus: "33,3 MHz" }')).toEqual(['decimal-comma']);
    expect(told('settings: { cpu: tx }')).toEqual(['word-wanted']);
    expect(told('settings: { buss: 40 MHz }')).toEqual(['near-shared-name']);
    expect(told('settings: { other: 40 }')).toEqual(['not-a-quantity']);
    expect(told('settings: { other: 8-bit }')).toEqual([]);
  });

  test('takes references in the unit of their reading, on real days only', () => {
    const reference = (date: string, values: string) =>
      told(`references:\n  - { date: ${date}, instrument: meter, readings: { ${values} } }`);
    expect(reference('2026-03-02', 'v5: 5.02')).toEqual([]);
    expect(reference('2026-03-02', 'v5: 5 MHz')).toEqual(['wrong-unit']);
    expect(reference('2026-03-02', 'fan: 12 V')).toEqual(['reference-quantity']);
    expect(reference('2026-03-02', 'own: 12')).toEqual(['not-a-quantity']);
    for (const day of [
      '2023-02-29',
      '2100-02-29',
      '2026-13-01',
      '2026-04-31',
      '2026-00-10',
      '2026-3-2',
      'May',
    ])
      expect(reference(day, 'v5: 5 V'), day).toEqual(['reference-day']);
    expect(reference('2000-02-29', 'v5: 5 V')).toEqual([]);
    expect(told('references:\n  - { date: 2026-03-02, readings: { v5: 5 V } }')).toEqual(['missing-key']);
  });

  test('takes places between 0 and 100 per cent, with their picture', () => {
    const point = (place: string) =>
      told(`pictures: { top: { file: top.svg, is: x } }\npoints: { v5: { is: x, ${place} } }`);
    expect(point('picture: top, x: 100 %, y: 0 %')).toEqual([]);
    expect(point('picture: top, x: 100.1 %, y: 0 %')).toEqual(['point-per-cent']);
    expect(point('picture: top, x: -1 %, y: 0 %')).toEqual(['point-per-cent']);
    expect(point('x: 1 %, y: 1 %')).toEqual(['unused-picture', 'point-place']);
    expect(point('picture: tpo, x: 1 %, y: 1 %')).toEqual(['no-picture-named']);
  });

  test('lets prose be prose, and nothing else', () => {
    const body = (text: string) =>
      codes(compileBoard(sheetText('').replace(/\n\n---/, '\n---') + text, { id: 'x' }).diagnostics);
    expect(body('\n## Memory\n\nSockets in pairs.\n\n- A\n- B\n\n| a | b |\n| - | - |\n| 1 | 2 |\n')).toEqual(
      [],
    );
    expect(body('\n## Memory\n\nDo, 3 minutes: look.\n\nThen → [Memory](#memory)\n')).toEqual([
      'sheet-lead-line',
    ]);
    expect(body('\nStop: here.\n')).toEqual(['sheet-lead-line']);
    expect(body('\n## Memory\n\n<b>bold</b>\n')).toContain('html');
    expect(body('\n# Plover P3\n').length).toBeGreaterThan(0);
  });

  test('never throws, and puts every problem inside the file', () => {
    const whole = sheetText(`
settings: { bus: 40 MHz, cpu: sx }${jumpers}
fitting: { memory: { is: Memory, sockets: [A, B], together: [[A, B]] } }
readings:
  v5: { expect: 5 V ± 3 %, source: legend }
  post: { codes: { 00: none, 01..1F: { band: early, means: m } }, source: x }
  beeps: { beeps: { long short: fine }, source: x }
pictures:
  top: { file: top.svg, is: component side }
points:
  v5: [{ is: contact 10, picture: top, x: 31 %, y: 62.5 % }]
references:
  - { date: 2024-02-29, instrument: meter, readings: { v5: 5.02 V } }`);
    const cut = fc.tuple(fc.nat(whole.length), fc.nat(30));
    const piece = fc.oneof(
      fc.constantFrom(
        '',
        '[]',
        '{}',
        ':',
        '- ',
        '"',
        '%',
        '<',
        '\n',
        '  ',
        '__proto__',
        'constructor',
        '\u{1F9E8}',
      ),
      fc.string({ unit: 'binary', maxLength: 6 }),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(cut, piece), { minLength: 1, maxLength: 4 }), (changes) => {
        const text = changes.reduce(
          (current, [[at, length], insert]) => current.slice(0, at) + insert + current.slice(at + length),
          whole,
        );
        const { board, diagnostics } = compileBoard(text, { id: 'x', foreign });
        for (const diagnostic of diagnostics) {
          expect(diagnostic.span.to).toBeLessThanOrEqual(text.length);
          expect(said(diagnostic).wrong).not.toMatch(/undefined|\[object/);
        }
        expect(board === null).toBe(diagnostics.some((each) => said(each).severity === 'error'));
      }),
      { numRuns: 120 },
    );
  });
});
