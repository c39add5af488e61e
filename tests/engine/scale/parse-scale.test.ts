import { describe, expect, test } from 'vitest';
import { checkScale, parseScale } from '../../../engine/scale/index.ts';
import { quantitySetting } from './quantity-reading.ts';

const settings = [
  quantitySetting('fsb', 'MHz', '66 MHz'),
  quantitySetting('vcc', 'V', '5 V'),
  quantitySetting('unset', 'V', null),
  { kind: 'options', id: 'cpu', is: 'The CPU', options: [], usual: null } as const,
];

const problems = (text: string, unit = 'V') => {
  const parsed = parseScale(text, unit);
  return parsed.ok ? checkScale(parsed.value, unit, settings) : parsed.problems;
};

describe('parseScale()', () => {
  test('takes bands and limits in turn, low end first', () => {
    const parsed = parseScale('  low < 0.8 V < between < vcc * 40 % < high ', 'V');
    expect(parsed).toMatchObject({
      ok: true,
      value: {
        written: 'low < 0.8 V < between < vcc * 40 % < high',
        bands: ['low', 'between', 'high'],
        limits: [
          { kind: 'quantity', value: '4/5', unit: 'V' },
          { kind: 'binary', operator: '*' },
        ],
        byMagnitude: false,
        nominal: null,
      },
    });
  });

  test('takes band names with digits, hyphens and underscores', () => {
    const parsed = parseScale('2nd-best < 1 V < very_good', 'V');
    expect(parsed.ok && parsed.value.bands).toEqual(['2nd-best', 'very_good']);
  });

  test.each([
    ['low', 'scale-shape', 'low'],
    ['low < 2 V', 'scale-shape', 'low < 2 V'],
    ['low < 2 V < mid < 3 V', 'scale-shape', 'low < 2 V < mid < 3 V'],
    ['2 V < low < 3 V', 'scale-shape', '2 V'],
    ['too low < 2 V < good', 'scale-shape', 'too low'],
    ['low < 2 V < ', 'scale-shape', ''],
    ['low < 2 V < low', 'same-band-twice', 'low'],
    ['low < 2 V 3 < good', 'formula-syntax', '3'],
    ['low < 2 < good', 'not-a-quantity', '2'],
    ['low < 2 v < good', 'unknown-unit', 'v'],
    ['low < 2,5 V < good', 'decimal-comma', '2,5 V'],
    ['low < (2 V < good', 'formula-syntax', ''],
  ])('reports "%s" as %s at "%s"', (text, code, at) => {
    const [problem] = problems(text);
    expect(problem?.code).toBe(code);
    expect(text.slice(problem?.from, problem?.to)).toBe(at);
  });

  test('reports every problem at once', () => {
    expect(problems('lo w < 2 < good < 3 v < good').map(({ code }) => code)).toEqual([
      'scale-shape',
      'not-a-quantity',
      'unknown-unit',
      'same-band-twice',
    ]);
  });

  test('refuses an absurdly long text', () => {
    expect(problems('a < 1 V < '.repeat(100_000)).map(({ code }) => code)).toEqual(['scale-shape']);
  });
});

describe('checkScale()', () => {
  test.each([
    ['low < 0.8 V < between < 2 V < high', 'V'],
    ['weak < 0.5 V < good', 'Vpp'],
    ['weak < vcc * 60 % < good', 'Vpp'],
    ['cold < 40 °C < warm < 150 °F < hot', '°C'],
    ['slow < fsb * 99 % < good < fsb * 101 % < fast', 'MHz'],
    ['few < 3 < some', 'counts'],
    ['small < 5 % < large', '%'],
    ['open < unset < good < 1 V < high', 'V'],
  ])('has nothing against "%s" in %s', (text, unit) => {
    expect(problems(text, unit)).toEqual([]);
  });

  test('wants limits of the kind the reading is', () => {
    expect(problems('low < 2 MHz < good')).toEqual([
      { code: 'wrong-unit', from: 6, to: 11, unit: 'MHz', expected: 'V' },
    ]);
    expect(problems('low < 2 Vpp < good')).toMatchObject([
      { code: 'wrong-unit', unit: 'Vpp', expected: 'V' },
    ]);
    expect(problems('low < fsb / 48 MHz < good')).toMatchObject([
      { code: 'wrong-unit', unit: '', expected: 'V' },
    ]);
    expect(problems('low < vcc + fsb < good')).toMatchObject([
      { code: 'unlike-units', left: 'V', right: 'MHz' },
    ]);
  });

  test('knows the settings and offers near misses', () => {
    expect(problems('low < vdd * 2 < good')).toMatchObject([{ code: 'unknown-name', name: 'vdd' }]);
    expect(problems('low < fbs2 < good < vc < high')).toMatchObject([
      { code: 'unknown-name', name: 'fbs2' },
      { code: 'unknown-name', name: 'vc', near: ['vcc'] },
    ]);
    expect(problems('low < cpu < good')).toEqual([{ code: 'not-a-number', from: 6, to: 9, name: 'cpu' }]);
  });

  test('wants each limit above the one before', () => {
    expect(problems('low < 2 V < mid < 1.5 V < high')).toEqual([
      { code: 'limits-order', from: 18, to: 23, lower: '2 V', upper: '1.5 V', when: null },
    ]);
    expect(problems('low < 2 V < mid < 2000 mV < high')).toMatchObject([
      { code: 'limits-order', lower: '2 V', upper: '2 V' },
    ]);
  });

  test('looks at the order of limits at the usual values, and names them', () => {
    expect(problems('low < fsb < mid < 60 MHz < high', 'MHz')).toMatchObject([
      { code: 'limits-order', lower: '66 MHz', upper: '60 MHz', when: 'fsb = 66 MHz' },
    ]);
    expect(problems('low < unset < mid < 1 V < high')).toEqual([]);
    // An unknown limit between two known ones does not hide their order.
    expect(problems('low < 3 V < a < unset < b < 2 V < high')).toMatchObject([
      { code: 'limits-order', lower: '3 V', upper: '2 V' },
    ]);
  });

  test('finds a division by zero at the usual values', () => {
    expect(problems('low < vcc / (fsb / 66 MHz - 1) < high')).toMatchObject([
      { code: 'division-by-zero', when: 'fsb = 66 MHz, vcc = 5 V' },
    ]);
  });
});
