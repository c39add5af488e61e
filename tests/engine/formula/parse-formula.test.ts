import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { evaluateFormula, namesIn, parseFormula, spanOfFormula } from '../../../engine/formula/index.ts';

const values = new Map([
  ['fsb', new Fraction(66_000_000)],
  ['vcc', new Fraction(5)],
  ['nothing', new Fraction(0)],
]);

/** The exact value of a formula with fsb = 66 MHz and vcc = 5 V. */
function value(text: string): string {
  const parsed = parseFormula(text);
  if (!parsed.ok) return parsed.problems.map((problem) => problem.code).join(', ');
  const given = evaluateFormula(parsed.value, (name) => values.get(name) ?? null);
  if (given.kind === 'value') return given.value.toFraction();
  return given.kind === 'missing' ? `missing ${given.names.join(', ')}` : 'undefined';
}

const problems = (text: string, at = 0) => {
  const parsed = parseFormula(text, { at });
  return parsed.ok ? [] : parsed.problems;
};

describe('parseFormula() with evaluateFormula()', () => {
  test.each([
    ['5 V', '5'],
    ['fsb * 2', '132000000'],
    ['fsb * 50 %', '33000000'],
    ['vcc * 60 % + 0.1 V', '31/10'],
    ['2 - 3 * 4', '-10'],
    ['(2 - 3) * 4', '-4'],
    ['2 - 3 - 4', '-5'],
    ['12 / 3 / 2', '2'],
    ['2 * -3', '-6'],
    ['-2 * 3', '-6'],
    ['-(2 + 3)', '-5'],
    ['- -vcc', '5'],
    ['1 - -1', '2'],
    ['−12 V', '-12'],
    ['fsb × 2 ÷ 4', '33000000'],
    ['1e3 Hz', '1000'],
    ['4k7Ω', '4700'],
    ['3V3', '33/10'],
    ['48 MHz * 2500 ppm', '120000'],
    ['14.31818 MHz * 352 / 105', '1007999872/21'],
    ['min(3, 1, 2)', '1'],
    ['max(vcc * 60 %, 2 V)', '3'],
    ['abs(-3)', '3'],
    ['ratio(33 MHz, fsb)', '1/2'],
    ['max(3,4)', '4'],
    ['-40 °F', '-40'],
    ['5 Vp-p', '5'],
    ['5 V - 3 V', '2'],
    ['(((((1)))))', '1'],
  ])('works out "%s" exactly', (text, result) => {
    expect(value(text)).toBe(result);
  });

  test.each([['1 / 0'], ['1 / nothing'], ['1 / (vcc - 5 V)'], ['ratio(1, nothing)'], ['max(1, 1 / 0)']])(
    'has no value for "%s", which divides by zero',
    (text) => {
      expect(value(text)).toBe('undefined');
    },
  );

  test('names every setting it lacks, once', () => {
    expect(value('a * vcc + b / a')).toBe('missing a, b');
    expect(value('min(a, 1 / 0)')).toBe('missing a');
  });

  test.each([
    ['', 'a value', 'the end'],
    ['5 V +', 'a value', 'the end'],
    ['* 2', 'a value', '*'],
    ['(1 + 2', '")"', 'the end'],
    ['min(1, 2', '")"', 'the end'],
    ['min()', 'a value', ')'],
    ['1 2', 'the end, or one of + - * /', '2'],
    ['fsb fsb', 'the end, or one of + - * /', 'fsb'],
    ['1, 2', 'the end, or one of + - * /', ','],
    ['fsb $ 2', 'a number, a name or + - * / ( )', '$ 2'],
    ['ratio(1)', '2 values for ratio', '1'],
    ['abs(1, 2)', '1 value for abs', '2'],
  ])('says what "%s" lacks', (text, expected, found) => {
    expect(problems(text)[0]).toMatchObject({ code: 'formula-syntax', expected, found });
  });

  test.each([
    ['3,3 V * 2', 'decimal-comma'],
    ['5 khz', 'unknown-unit'],
    ['200k', 'unknown-unit'],
    ['2 fsb', 'unknown-unit'],
    ['1e99 V', 'not-a-quantity'],
    ['average(1, 2)', 'unknown-function'],
  ])('reports "%s" as %s', (text, code) => {
    expect(problems(text).map((problem) => problem.code)).toEqual([code]);
  });

  test('offers near misses of functions', () => {
    expect(problems('mix(1, 2)')[0]).toMatchObject({
      code: 'unknown-function',
      name: 'mix',
      near: ['max', 'min'],
    });
  });

  test('counts places from where the formula begins', () => {
    expect(problems('vcc + 5 khz', 100)).toEqual([
      { code: 'unknown-unit', from: 108, to: 111, unit: 'khz', near: 'kHz' },
    ]);
    const parsed = parseFormula('vcc * (1 + fsb)', { at: 7 });
    if (!parsed.ok || parsed.value.kind !== 'binary') throw new Error('Expected a product');
    expect(spanOfFormula(parsed.value.left)).toEqual({ from: 7, to: 10 });
    expect(spanOfFormula(parsed.value.right)).toEqual({ from: 14, to: 21 });
  });

  test('refuses formulas that are absurdly long or deep', () => {
    expect(value('1+'.repeat(300))).toBe('formula-syntax');
    expect(value('('.repeat(200))).toBe('formula-syntax');
    expect(value('-'.repeat(200))).toBe('formula-syntax');
    expect(value(`1${'+1'.repeat(200)}`)).toBe('201');
  });

  test('does not take a property of every object for a function', () => {
    expect(value('toString(1)')).toBe('unknown-function');
    expect(value('constructor')).toBe('missing constructor');
  });
});

describe('namesIn()', () => {
  test('lists each name once, in order', () => {
    const parsed = parseFormula('max(b, a * 2, -(b)) / c');
    expect(parsed.ok && namesIn(parsed.value)).toEqual(['b', 'a', 'c']);
  });
});
