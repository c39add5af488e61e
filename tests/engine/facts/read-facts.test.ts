import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { factsOf, withReading } from './facts-of.ts';

describe('readFacts()', () => {
  test('builds settings, readings and faults with their defaults', () => {
    const { facts, codes } = factsOf(`minutes: 3
given: { code: none }
settings:
  fsb: { is: Bus, unit: MHz, usual: 33 MHz }
  cpu: { is: Processor, options: { small: one rail, large: } , usual: small }
readings:
  v5: { is: Five, unit: V, expect: 5 V ± 5 %, with: meter, power: on, source: s }
  clk:
    is: Clock
    unit: MHz
    scale: none < 1 MHz < slow < fsb * 99 % < good
    normal: good
    needs: [v5]
    after: [v5]
    with: [scope, probe]
    points: [a, b]
    set: 1 V per division
    minutes: 0.5
    wait: 2 hours
    source: s
  code: { is: Code, codes: { 10: late, 0D: early, 1E3: x }, normal: any, needs: { clk: [good, slow] }, hidden: other }
  lamp: { is: Lamp, options: [on, off], normal: on, needs: [v5], hidden: off, source: s }
faults:
  supply: { is: Supply, weight: 2.5, shows: { v5: { low: 70 %, high: 30 % }, lamp: [on, off] }, comes: sometimes, rest: unknown, parts: [p], tools: [t], minutes: 5, source: s }
  other: { is: Other, shows: { code: late } }
`);
    // 1E3 has three digits where the others have two: the bands are not sure any more.
    expect(codes).toEqual(['code-shape']);
    expect(facts.minutes).toBe(3);
    expect(facts.settings).toEqual([
      { kind: 'quantity', id: 'fsb', is: 'Bus', unit: 'MHz', usual: { value: '33000000', unit: 'MHz' } },
      {
        kind: 'options',
        id: 'cpu',
        is: 'Processor',
        options: [
          { name: 'small', means: 'one rail' },
          { name: 'large', means: null },
        ],
        usual: 'small',
      },
    ]);
    const [v5, clk, code, lamp] = facts.readings;
    expect(v5).toMatchObject({
      normal: ['good'],
      needs: [],
      hidden: null,
      with: ['meter'],
      power: 'on',
      minutes: 3,
      wait: 0,
    });
    expect(clk).toMatchObject({
      measure: { kind: 'quantity', unit: 'MHz', scale: { bands: ['none', 'slow', 'good'] } },
      needs: [{ reading: 'v5', bands: ['good'] }],
      hidden: 'none',
      after: ['v5'],
      with: ['scope', 'probe'],
      points: ['a', 'b'],
      set: '1 V per division',
      minutes: 0.5,
      wait: 120,
    });
    expect(code).toMatchObject({
      measure: { kind: 'codes', bands: ['late', 'early', 'other'] },
      normal: 'any',
      needs: [{ reading: 'clk', bands: ['good', 'slow'] }],
      hidden: 'other',
    });
    expect(lamp).toMatchObject({ hidden: 'off' });
    expect(facts.faults).toEqual([
      {
        id: 'supply',
        is: 'Supply',
        weight: 2.5,
        weights: {},
        sets: {},
        onlyIf: [],
        which: null,
        shows: [
          {
            reading: 'v5',
            shares: [
              { band: 'low', share: 0.7 },
              { band: 'high', share: 0.3 },
            ],
          },
          {
            reading: 'lamp',
            shares: [
              { band: 'on', share: 0.5 },
              { band: 'off', share: 0.5 },
            ],
          },
        ],
        comes: 'sometimes',
        rest: 'unknown',
        parts: ['p'],
        tools: ['t'],
        minutes: 5,
        source: 's',
      },
      {
        id: 'other',
        is: 'Other',
        weight: 1,
        weights: {},
        sets: {},
        onlyIf: [],
        which: null,
        shows: [{ reading: 'code', shares: [{ band: 'late', share: 1 }] }],
        comes: 'always',
        rest: 'normal',
        parts: [],
        tools: [],
        minutes: null,
        source: null,
      },
    ]);
  });

  test('keeps codes in the order of the file, where objects would sort them', () => {
    const { facts } = factsOf(
      withReading('is: r\ncodes: { 20: second, 10: first, 00: zero }\nnormal: first'),
    );
    expect(facts.readings[2]?.measure).toMatchObject({
      ranges: [{ from: '20' }, { from: '10' }, { from: '00' }],
      bands: ['second', 'first', 'zero', 'other'],
    });
  });

  test('knows what a reading shows while something is missing: none, zero, or what it says', () => {
    const hidden = (yaml: string) =>
      factsOf(withReading(`is: r\n${yaml}\nneeds: [v5]`)).facts.readings[2]?.hidden;
    expect(hidden('unit: V\nscale: low < 1 V < good < 2 V < high\nnormal: good')).toBe('low');
    expect(hidden('unit: V\nscale: neg < -1 V < mid < 1 V < pos\nnormal: pos')).toBe('mid');
    expect(hidden('unit: V\nexpect: -12 V ± 10 %')).toBe('low');
    expect(hidden('unit: MHz\nexpect: fsb ± 1 %')).toBe('low');
    expect(hidden('options: [pulses, none]\nnormal: pulses')).toBe('none');
    expect(hidden('options: [pulses, flat]\nnormal: pulses\nhidden: flat')).toBe('flat');
  });

  test.each([
    ['a key that is nearly right', 'is: r\nunit: V\nexpct: 5 V ± 5 %', ['unknown-key: expct']],
    ['text for a number', 'is: r\noptions: [a]\nnormal: a\nminutes: 2,5', ['number-wanted: 2,5']],
    ['a list for a text', 'is: [r]\noptions: [a]\nnormal: a', ['wrong-shape: [r]']],
    ['nothing behind a key', 'is:\noptions: [a]\nnormal: a', ['empty-value: is']],
    ['a missing key', 'options: [a]\nnormal: a', ['missing-key: r']],
    ['no measure', 'is: r\nnormal: a', ['one-measure: r']],
    ['two measures', 'is: r\noptions: [a]\ncodes: { 00: a }\nnormal: a', ['one-measure: r']],
    [
      'a problem inside a plain text',
      'is: r\nunit: V\nscale: a < 5 kHz < b\nnormal: a',
      ['wrong-unit: 5 kHz'],
    ],
    ['a problem inside quotes', 'is: r\nunit: V\nscale: "a < 5 kHz < b"\nnormal: a', ['wrong-unit: 5 kHz']],
    [
      'a problem in a folded text',
      'is: r\nunit: V\nscale: >-\n  a <\n  5 kHz < b\nnormal: a',
      ['wrong-unit: >-\n      a <\n      5 kHz < b'],
    ],
    ['a setting that is none', 'is: r\nunit: MHz\nexpect: fbs ± 1 %', ['unknown-name: fbs']],
    ['a choice in a formula', 'is: r\nunit: MHz\nexpect: cpu ± 1 %', ['not-a-number: cpu']],
    ['a band that is none', 'is: r\noptions: [steady, noisy]\nnormal: staedy', ['no-band-named: staedy']],
    [
      'a reading that is none',
      'is: r\noptions: [a]\nnormal: a\nhidden: a\nneeds: [v6]\nafter: [lampp]',
      ['no-reading-named: v6', 'no-reading-named: lampp'],
    ],
    [
      'a band of a needed reading',
      'is: r\noptions: [a]\nnormal: a\nhidden: a\nneeds: { v5: [good, fine] }',
      ['no-band-named: fine'],
    ],
    ['nothing to show while hidden', 'is: r\noptions: [a]\nnormal: a\nneeds: [v5]', ['hidden-missing: r']],
    ['a need of its own', 'is: r\noptions: [a, none]\nnormal: a\nneeds: [r]', ['circle: needs']],
    ['a good band that is not normal', 'is: r\noptions: [good, bad]\nnormal: bad', ['good-not-normal: bad']],
    ['a word of conditions', 'is: r\noptions: [all, some]\nnormal: some', ['reserved-word: all']],
    [
      'a word of the language below',
      'is: r\noptions: [constructor, some]\nnormal: some',
      ['reserved-word: constructor'],
    ],
    ['a name with spaces', 'is: r\noptions: [very loud, quiet]\nnormal: quiet', ['name-form: very loud']],
    ['a code twice', 'is: r\ncodes: { 00-0F: a, 0A: b }\nnormal: a', ['code-overlap: 0A']],
    [
      'a table for a word',
      'is: r\noptions: [a]\nnormal: a\npower: { on: off }',
      ['wrong-shape: { on: off }'],
    ],
    ['a waiting time', 'is: r\noptions: [a]\nnormal: a\nwait: a while', ['wait-form: a while']],
  ])('tells %s at its place', (_, yaml, told) => {
    expect(factsOf(withReading(yaml)).told).toEqual(told);
  });

  test.each([
    ['shows: { v5: lw }', ['no-band-named: lw']],
    ['shows: { v6: low }', ['no-reading-named: v6']],
    ['shows: { v5: { low: 50 %, high: 30 % } }', ['shares-sum: { low: 50 %, high: 30 % }']],
    ['shows: { v5: { low: half, high: 50 % } }', ['share-form: half']],
    ['shows: { v5: { lw: 50 %, high: 50 % } }', ['no-band-named: lw']],
    ['shows: { v5: { low: { a: b }, high: 50 % } }', ['wrong-shape: { a: b }']],
    ['weight: -1', ['number-range: -1']],
    ['comes: often', ['word-wanted: often']],
  ])('tells what is wrong with a fault: %s', (yaml, told) => {
    const faults = `faults:\n  f: { is: f }\n  g:\n    is: g\n    ${yaml}\n`;
    const readings = 'readings:\n  v5: { is: five, unit: V, expect: 5 V ± 5 %, source: s }\n';
    expect(factsOf(readings + faults).told).toEqual(told);
  });

  test('thirds add up: shares may have decimals', () => {
    const readings = 'readings:\n  v5: { is: five, unit: V, expect: 5 V ± 5 %, source: s }\n';
    const shows = '{ low: 33.3 %, good: 33.3 %, high: 33.4 % }';
    expect(factsOf(`${readings}faults:\n  f: { is: f, shows: { v5: ${shows} } }\n`).told).toEqual([]);
  });

  test('one wrong reading loses neither its name nor the others', () => {
    const { facts, told } = factsOf(
      withReading('is: r\nunit: V\nscale: low < 1 Volz < good < high\nnormal: good'),
    );
    expect(told).toHaveLength(1);
    expect(facts.readings.map(({ id }) => id)).toEqual(['v5', 'lamp', 'r']);
  });

  test('a broken setting is told once, and not again by each reading that computes with it', () => {
    const { told } = factsOf(`settings:
  fsb: { is: bus, unit: Mhzz }
readings:
  a: { is: a, unit: MHz, expect: fsb ± 1 %, source: s }
  b: { is: b, unit: MHz, expect: fsb * 2 ± 1 %, source: s }
faults:
  f: { is: f }
`);
    expect(told).toEqual(['unknown-unit: Mhzz']);
  });

  test('tells needs and orders that go round', () => {
    const row = (id: string, rest: string) =>
      `  ${id}: { is: ${id}, options: [none, good], normal: good, source: s, ${rest} }\n`;
    const { told, diagnostics } = factsOf(
      `readings:\n${row('a', 'needs: [b]')}${row('b', 'needs: [c]')}${row('c', 'needs: [a], after: [d]')}${row('d', 'after: [c]')}faults:\n  f: { is: f }\n`,
    );
    expect(told).toEqual(['circle: needs', 'circle: after']);
    expect(diagnostics.map((each) => ('names' in each ? each.names : null))).toEqual([
      ['a', 'b', 'c', 'a'],
      ['c', 'd', 'c'],
    ]);
  });

  test('warns of readings without a source, but not where nothing is judged', () => {
    const { diagnostics } = factsOf(
      'readings:\n  a: { is: a, options: [x, y], normal: x }\n  b: { is: b, options: [x, y], normal: any }\nfaults:\n  f: { is: f }\n',
    );
    expect(diagnostics).toMatchObject([{ code: 'missing-source', reading: 'a' }]);
  });

  test('tells what is missing at the top', () => {
    expect(factsOf('', 'kind: tree\n').told).toEqual(
      ['format', 'title', 'symptom', 'boards', 'readings', 'faults'].map(() => 'missing-key: kind: tree'),
    );
  });

  test('has nothing to say about the example of the language reference', () => {
    const reference = readFileSync('schema/README.md', 'utf8');
    const front = /^```markdown\n---\n([\s\S]*?)^---$/m.exec(reference)?.[1] ?? '';
    const { facts, codes } = factsOf(front, '');
    expect(codes).toEqual([]);
    expect(facts.readings.length).toBeGreaterThan(1);
  });
});
