import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

const rest = `settings:
  bus: { is: Bus, unit: MHz, usual: 66 MHz }
  cpu: { is: CPU, options: [small, large] }
readings:
  v5: { is: v, unit: V, expect: 5 V ± 5 %, source: s }
  lines: { is: l, each: [A0, A1, A2], options: [moves, stuck, floats], normal: moves, source: s }
  pair: { is: p, each: [D0, D1], options: [moves, stuck], normal: moves, source: s }
faults:
  f:
    is: f
`;

function fault(yaml: string) {
  const found = factsOf(
    rest + yaml.replace(/^/gm, '    '),
    'format: 1\nkind: tree\ntitle: T\nsymptom: S\nboards: [486, 586]\n',
  );
  return { ...found, f: found.facts.faults[0] };
}

const bands = (yaml: string) =>
  fault(`shows: { lines: ${yaml} }`).f?.shows[0]?.shares.map(
    ({ band, share }) => `${band} ${share.toFixed(3)}`,
  );

describe('a fault', () => {
  test('takes settings that it makes wrong, what must have been seen, and what to note', () => {
    const { f, told } = fault(
      'sets: { bus: 50 MHz, cpu: large }\nonly if: { v5: [good, low] }\nwhich: which jumper',
    );
    expect(told).toEqual([]);
    expect(f).toMatchObject({
      sets: { bus: { value: '50000000', unit: 'MHz' }, cpu: 'large' },
      onlyIf: [{ reading: 'v5', bands: ['good', 'low'] }],
      which: 'which jumper',
    });
  });

  test('has a weight for each board class, and their mean where the class is not known', () => {
    const { f, told } = fault('weight: { 486: 18, 586: 3 }');
    expect(told).toEqual([]);
    expect(f).toMatchObject({ weight: 10.5, weights: { 486: 18, 586: 3 } });
  });

  test('shows how many of many alike are out of normal', () => {
    expect(bands('{ one: stuck }')).toEqual(['one-stuck 1.000']);
    expect(bands('{ all: moves }')).toEqual(['all-normal 1.000']);
    expect(bands('{ several: [stuck, floats] }')).toEqual(['several-stuck 0.500', 'several-floats 0.500']);
    expect(bands('{ any: stuck }')).toEqual(['one-stuck 0.333', 'several-stuck 0.333', 'all-stuck 0.333']);
    expect(bands('{ any: [stuck, floats] }')).toHaveLength(7);
    expect(bands('{ one: stuck, all: floats }')).toEqual(['one-stuck 0.500', 'all-floats 0.500']);
    expect(bands('one-stuck')).toEqual(['one-stuck 1.000']);
    expect(bands('{ one-stuck: 75 %, stuck+floats: 25 % }')).toEqual([
      'one-stuck 0.750',
      'stuck+floats 0.250',
    ]);
  });

  test.each([
    ['sets: { buz: 50 MHz }', ['unknown-name: buz']],
    ['sets: { bus: 5 V }', ['wrong-unit: V']],
    ['sets: { cpu: lage }', ['word-wanted: lage']],
    ['only if: [v6]', ['no-reading-named: v6']],
    ['only if: { v5: [fine] }', ['no-band-named: fine']],
    ['weight: { 386: 1 }', ['no-class-named: 386']],
    ['weight: { 486: much }', ['number-wanted: much']],
    ['weight: { 486: 0 }', ['number-range: 0']],
    ['weight: much', ['number-wanted: much']],
    ['weight: [1]', ['wrong-shape: [1]']],
    ['shows: { lines: stuck }', ['shows-how-many: stuck']],
    ['shows: { lines: { one: stck } }', ['no-band-named: stck']],
    ['shows: { lines: { one: moves } }', ['members-untold: one']],
    ['shows: { pair: { several: stuck } }', ['members-untold: several']],
    ['shows: { lines: { one: stuck, some: floats } }', ['unknown-key: some']],
    ['shows: { v5: { one: low } }', ['no-band-named: one', 'share-form: low']],
  ])('is told what is wrong: %s', (yaml, told) => {
    expect(fault(yaml).told).toEqual(told);
  });
});
