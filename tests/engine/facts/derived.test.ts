import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

const inputs = `settings:
  bus: { is: Bus, unit: MHz, usual: 66 MHz }
  cpu: { is: CPU, options: [a, b] }
readings:
  clk: { is: Clock, unit: MHz, expect: bus ± 1 %, source: s }
  usb: { is: USB, unit: MHz, expect: 48 MHz ± 1 %, source: s }
  vcc: { is: Supply, unit: V, expect: 5 V ± 5 %, source: s }
  swing: { is: Swing, unit: Vpp, scale: weak < twin * 60 % < good, normal: good, usual: 1.2 Vpp, source: s }
  code: { is: Code, codes: { 00: x }, normal: x, source: s }
  pins: { is: Pins, each: [p1, p2], unit: V, expect: 5 V ± 5 %, source: s }
`;
const faults = 'faults:\n  f: { is: f }\n';

function derived(yaml: string) {
  const found = factsOf(`${inputs}  d:\n    is: d\n    source: s\n${yaml.replace(/^/gm, '    ')}\n${faults}`);
  return { ...found, d: found.facts.readings.find(({ id }) => id === 'd') };
}

describe('a derived reading', () => {
  test('computes a quantity, and costs no minutes', () => {
    const { d, told } = derived('from: clk * 2\nunit: MHz\nexpect: bus * 2 ± 1 %');
    expect(told).toEqual([]);
    expect(d).toMatchObject({
      measure: { kind: 'quantity', unit: 'MHz' },
      normal: ['good'],
      minutes: 0,
      from: { kind: 'binary', operator: '*', left: { kind: 'name', name: 'clk' } },
    });
  });

  test('may be a plain number, without a unit', () => {
    const { d, told } = derived(
      'from: factor(clk / bus, usb / 48 MHz)\nscale: low < 0.95 < good < 1.05 < high\nnormal: good',
    );
    expect(told).toEqual([]);
    expect(d?.measure).toMatchObject({
      kind: 'quantity',
      unit: '',
      scale: { bands: ['low', 'good', 'high'] },
    });
  });

  test('gives yes or no where it compares', () => {
    const { d, told } = derived('from: clk > bus * 1.02\nnormal: no');
    expect(told).toEqual([]);
    expect(d?.measure).toEqual({
      kind: 'options',
      options: [
        { name: 'yes', means: null },
        { name: 'no', means: null },
      ],
    });
  });

  test('may rest on other derived readings, in any order', () => {
    const { told } = derived('from: e + 1 MHz\nunit: MHz\nexpect: 3 MHz ± 5 %\n'.trimEnd());
    expect(told).toEqual(['no-input-named: e']);
    expect(
      factsOf(
        `${inputs}  d: { is: d, from: e + 1 MHz, unit: MHz, expect: 3 MHz ± 5 %, source: s }\n  e: { is: e, from: clk / 2, unit: MHz, expect: 33 MHz ± 5 %, source: s }\n${faults}`,
      ).told,
    ).toEqual([]);
  });

  test.each([
    ['a name that is none', 'from: clk / buz\nscale: a < 1 < b\nnormal: b', ['no-input-named: buz']],
    ['a choice', 'from: clk * cpu\nscale: a < 1 < b\nnormal: b', ['input-not-number: cpu']],
    ['a code', 'from: code + 1\nscale: a < 1 < b\nnormal: b', ['input-not-number: code']],
    ['many alike', 'from: pins / 5 V\nscale: a < 1 < b\nnormal: b', ['input-not-number: pins']],
    ['unlike units', 'from: vcc + clk\nunit: V\nexpect: 5 V ± 1 %', ['unlike-units: vcc']],
    ['unlike kinds of voltage', 'from: swing > 2 Vrms\nnormal: no', ['unlike-units: swing']],
    [
      'a result in another unit',
      'from: clk / bus\nunit: MHz\nexpect: 1 MHz ± 1 %',
      ['wrong-unit: clk / bus'],
    ],
    [
      'a ratio that is none',
      'from: factor(clk, usb / 48 MHz)\nscale: a < 1 < b\nnormal: b',
      ['wrong-unit: clk'],
    ],
    ['no scale', 'from: clk / bus\nnormal: good', ['one-measure: d']],
    ['a unit alone', 'from: clk * 2\nunit: MHz\nnormal: good', ['one-measure: d']],
    ['a formula that is none', 'from: clk / / bus\nscale: a < 1 < b\nnormal: b', ['formula-syntax: /']],
    ['a text in which quotes hide', 'from: "clk + vcc"\nscale: a < 1 < b\nnormal: b', ['unlike-units: clk']],
    [
      'options beside it',
      'from: clk / bus\noptions: [a, b]\nscale: a < 1 < b\nnormal: b',
      ['derived-key: options'],
    ],
    ['a scale of yes and no', 'from: clk > bus\nscale: a < 1 < b\nnormal: no', ['derived-key: scale']],
    [
      'what only somebody who takes it needs',
      'from: clk > bus\nnormal: no\nwith: meter\npoints: [a]\npower: on\nwhen: x y',
      ['derived-key: with', 'derived-key: points', 'derived-key: power', 'derived-key: when'],
    ],
    ['itself', 'from: d + 1\nscale: a < 1 < b\nnormal: b', ['circle: from']],
    ['the twin', 'from: twin / 2\nscale: a < 1 < b\nnormal: b', ['no-input-named: twin']],
  ])('is told of %s', (_, yaml, told) => {
    expect([...derived(yaml).told].sort()).toEqual([...told].sort());
  });

  test('is told of unlike units with both places', () => {
    const { diagnostics, related } = derived('from: max(vcc, clk) / 2\nunit: V\nexpect: 5 V ± 1 %');
    expect(diagnostics).toMatchObject([
      { code: 'unlike-units', left: 'V', right: 'MHz', leftText: 'vcc', rightText: 'clk' },
    ]);
    expect(related).toEqual(['clk']);
  });

  test('does not go round through others', () => {
    const row = (id: string, from: string) =>
      `  ${id}: { is: ${id}, from: ${from}, unit: MHz, expect: 3 MHz ± 5 %, source: s }\n`;
    const { told, diagnostics } = factsOf(
      inputs + row('a', 'b * 2') + row('b', 'c + clk') + row('c', 'a') + faults,
    );
    expect(told).toEqual(['circle: from']);
    expect(diagnostics[0]).toMatchObject({ key: 'from', names: ['a', 'b', 'c', 'a'] });
  });

  test('is not told again what is wrong with its inputs', () => {
    const { told } = factsOf(
      `settings:\n  bus: { is: b, unit: Mzz }\nreadings:\n  r: { is: r, unit: Vx, expect: 1 V ± 1 %, source: s }\n  d: { is: d, from: r / bus, scale: a < 1 < b, normal: b, source: s }\n${faults}`,
    );
    expect(told).toEqual(['unknown-unit: Mzz', 'unknown-unit: Vx']);
  });
});

describe('a limit that rests on the known-good board', () => {
  test('computes with "twin" in the unit of the reading', () => {
    const { facts, told } = derived('options: [a, b]\nnormal: a');
    expect(told).toEqual([]);
    expect(facts.readings[3]).toMatchObject({
      usual: { value: '6/5', unit: 'Vpp' },
      measure: { scale: { limits: [{ left: { kind: 'name', name: 'twin' } }] } },
    });
  });

  test.each([
    ['unit: V\nscale: a < twin + 1 MHz < b\nnormal: b', ['unlike-units: twin']],
    ['unit: V\nscale: a < twin * 2 s < b\nnormal: b', ['wrong-unit: twin * 2 s']],
    ['unit: V\nscale: a < twin < b < 5 V < c\nnormal: b\nusual: 6 V', ['limits-order: 5 V']],
    ['unit: V\nexpect: twin ± 5 %\nusual: 6 MHz', ['unknown-unit: MHz']],
    ['unit: V\nexpect: twn ± 5 %\nusual: 6 V', ['unknown-name: twn']],
  ])('is checked as any other: %j', (yaml, told) => {
    expect(derived(yaml).told.map((one) => one.replace('wrong-unit: MHz', 'unknown-unit: MHz'))).toEqual(
      told,
    );
  });

  test('keeps its name to itself: no setting and no reading may be called so', () => {
    const { told } = factsOf(
      `settings:\n  twin: { is: t, unit: V }\nreadings:\n  factor: { is: t, options: [a, b], normal: a, source: s }\n${faults}`,
    );
    expect(told).toEqual(['reserved-word: twin', 'reserved-word: factor']);
  });
});
