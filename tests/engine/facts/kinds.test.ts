import { describe, expect, test } from 'vitest';
import { factsOf, withReading } from './facts-of.ts';

const readingOf = (yaml: string) => {
  const found = factsOf(withReading(yaml));
  return { ...found, r: found.facts.readings[2] };
};

describe('many alike', () => {
  test('are one reading with bands that say how many are out of normal', () => {
    const { r, told } = readingOf(
      'is: r\neach: [A0, A1, A2]\noptions: [moves, stuck, floats]\nnormal: moves',
    );
    expect(told).toEqual([]);
    expect(r?.normal).toEqual(['all-normal']);
    expect(r?.measure).toMatchObject({
      kind: 'each',
      members: ['A0', 'A1', 'A2'],
      of: { kind: 'options' },
      normal: ['moves'],
      bands: [
        'all-normal',
        'one-stuck',
        'several-stuck',
        'all-stuck',
        'one-floats',
        'several-floats',
        'all-floats',
        'stuck+floats',
      ],
    });
  });

  test.each([
    ['unit: V\nexpect: 5 V ± 5 %', 'quantity'],
    ['codes: { 00: a, 01: b }\nnormal: a', 'codes'],
    ['beeps: { none: a, long: b }\nnormal: b', 'beeps'],
  ])('can be of any single measure: %j', (yaml, kind) => {
    expect(readingOf(`is: r\neach: [a1, a2]\n${yaml}`)).toMatchObject({
      told: [],
      r: { measure: { of: { kind } } },
    });
  });

  test('all show what one shows while something is missing', () => {
    const hidden = (yaml: string) => readingOf(`is: r\neach: [a1, a2]\nneeds: [v5]\n${yaml}`).r?.hidden;
    expect(hidden('unit: V\nexpect: 5 V ± 5 %')).toBe('all-low');
    expect(hidden('unit: V\nexpect: 0 V ± 1 V')).toBe('all-normal');
    expect(hidden('options: [moves, none]\nnormal: moves')).toBe('all-none');
    expect(hidden('options: [moves, stuck]\nnormal: moves\nhidden: stuck')).toBe('all-stuck');
    expect(hidden('options: [moves, stuck]\nnormal: moves')).toBe(null);
  });

  test.each([
    ['one alone', 'each: [a1]\noptions: [x, y]\nnormal: x', ['each-size: [a1]']],
    ['the same twice', 'each: [a1, a2, a1]\noptions: [x, y]\nnormal: x', ['listed-twice: a1']],
    ['a word of rows', 'each: [a1, rest]\noptions: [x, y]\nnormal: x', ['reserved-word: rest']],
    ['a name with spaces', 'each: [a 1, a2]\noptions: [x, y]\nnormal: x', ['name-form: a 1']],
    ['a name that is a band', 'each: [low, a2]\nunit: V\nexpect: 5 V ± 5 %', ['member-is-band: each']],
    [
      'five bands out of normal',
      'each: [a1, a2]\noptions: [n, b, c, d, e, f]\nnormal: n',
      ['each-bands: each'],
    ],
    ['nothing that is normal', 'each: [a1, a2]\noptions: [x, y]\nnormal: any', ['each-not-judged: normal']],
    ['tries', 'each: [a1, a2]\ntries: 5\nnormal: always', ['one-measure: r']],
    ['a band that is none', 'each: [a1, a2]\noptions: [x, y]\nnormal: z', ['no-band-named: z']],
    ['a band called normal', 'each: [a1, a2]\noptions: [x, normal]\nnormal: x', ['reserved-word: r']],
    ['a text', 'each: a1\noptions: [x, y]\nnormal: x', ['wrong-shape: a1']],
  ])('are told of %s', (_, yaml, told) => {
    expect(readingOf(`is: r\n${yaml}`).told).toEqual(told);
  });

  test('of more than 64 are told, and nothing explodes', () => {
    const members = Array.from({ length: 100 }, (_, at) => `m${at}`).join(', ');
    const bands = Array.from({ length: 40 }, (_, at) => `b${at}`).join(', ');
    const { codes, r } = readingOf(`is: r\neach: [${members}]\noptions: [${bands}]\nnormal: b0`);
    expect(codes).toEqual(['each-size', 'each-bands']);
    expect(r?.measure.kind === 'each' && r.measure.bands.length).toBeLessThan(30);
  });
});

describe('beeps and tries', () => {
  test('know silence and no success as what they show while something is missing', () => {
    const beeps = readingOf(
      'is: r\nbeeps: { long short short: video, none: silent }\nnormal: video\nneeds: [v5]',
    );
    expect(beeps).toMatchObject({
      told: [],
      r: { hidden: 'silent', measure: { bands: ['video', 'silent', 'other'] } },
    });
    const other = readingOf(
      'is: r\nbeeps: { 1-3-3: { band: memory, means: First bank } }\nnormal: other\nneeds: [v5]',
    );
    expect(other).toMatchObject({
      told: [],
      r: { hidden: 'other', measure: { patterns: [{ means: 'First bank' }] } },
    });
    const tries = readingOf('is: r\ntries: 20\nnormal: always\nneeds: [v5]');
    expect(tries).toMatchObject({ told: [], r: { hidden: 'never', measure: { kind: 'tries', enough: 20 } } });
  });

  test.each([
    ['is: r\nbeeps: { ding: a }\nnormal: a', ['beep-shape: ding']],
    ['is: r\nbeeps: { long short: a, 1 long 1 short: b }\nnormal: a', ['beep-twice: 1 long 1 short']],
    ['is: r\nbeeps: { long: very loud }\nnormal: other', ['name-form: very loud']],
    ['is: r\ntries: many\nnormal: always', ['number-wanted: many']],
    ['is: r\ntries: 1\nnormal: always', ['number-range: 1']],
    ['is: r\ntries: 2.5\nnormal: always', ['number-wanted: 2.5']],
    ['is: r\ntries: 20\nunit: V\nnormal: always', ['one-measure: r']],
    ['is: r\ntries: 20\nnormal: good', ['no-band-named: good']],
  ])('are told what is wrong: %j', (yaml, told) => {
    expect(readingOf(yaml).told).toEqual(told);
  });
});

describe('conditions and tools', () => {
  const faults = 'faults:\n  f: { is: f }\n';
  const row = (yaml: string) =>
    `readings:\n  r: { is: r, options: [a, b], normal: a, source: s, ${yaml} }\n${faults}`;

  test('conditions keep their order, the first value being how the board comes', () => {
    const { facts, told } = factsOf(
      `conditions: { cpu: [in, out], board: [cold, warm] }\n${row('when: "cpu out, board warm"')}`,
    );
    expect(told).toEqual([]);
    expect(facts.conditions).toEqual([
      { id: 'cpu', values: ['in', 'out'] },
      { id: 'board', values: ['cold', 'warm'] },
    ]);
    expect(facts.readings[0]?.when).toEqual({ cpu: 'out', board: 'warm' });
  });

  test.each([
    ['conditions: { cards: [in, in] }\n', ['listed-twice: in']],
    ['conditions: { cards: in }\n', ['wrong-shape: in']],
    ['conditions: { wait: [a, b] }\n', ['reserved-word: wait']],
    ['conditions: { 2nd: [a, b] }\n', ['name-form: 2nd']],
    ['conditions: { cards: [half in, out] }\n', ['name-form: half in']],
    ['tools: [meter, scope, meter]\n', ['listed-twice: meter']],
    ['tools: [meter, scope]\n', []],
  ])('are told what is wrong: %j', (head, told) => {
    expect(factsOf(head + row('with: [meter]')).told).toEqual(told);
  });

  test('places of several conditions are told one by one, and a list is taken too', () => {
    const head = 'conditions: { cpu: [in, out] }\n';
    expect(factsOf(head + row('when: "cpu up, cp in"')).told).toEqual([
      'no-value-named: cpu up',
      'no-condition-named: cp in',
    ]);
    expect(factsOf(head + row('when: [cpu out]')).facts.readings[0]?.when).toEqual({ cpu: 'out' });
  });

  test('a closed list of tools is closed', () => {
    expect(factsOf(`tools: [meter, spare cpu]\n${row('with: [metre, spare cpu]')}`).told).toEqual([
      'no-tool-named: metre',
    ]);
    expect(factsOf(row('with: anything')).facts.tools).toBe(null);
  });
});
