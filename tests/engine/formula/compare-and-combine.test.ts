import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { checkFormula, dimensionOf, evaluateFormula, parseFormula } from '../../../engine/formula/index.ts';

const values: Readonly<Record<string, Fraction | null>> = {
  a: new Fraction(1),
  b: new Fraction(63, 100),
  c: new Fraction(2),
  dead: new Fraction(0),
  unread: null,
  unasked: null,
};

function computed(text: string): string {
  const parsed = parseFormula(text, { comparison: true });
  if (!parsed.ok) return parsed.problems.map(({ code }) => code).join();
  const found = evaluateFormula(parsed.value, (name) => values[name] ?? null);
  if (found.kind === 'missing') return `missing ${found.names.join(' ')}`;
  return found.kind === 'value' ? found.value.toFraction() : found.kind;
}

describe('a comparison', () => {
  test.each([
    ['a < c', '1'],
    ['a > c', '0'],
    ['a <= 1', '1'],
    ['a ≥ 1', '1'],
    ['a >= c', '0'],
    ['c > b * 2 + a - 1', '1'],
    ['(a) =< (1)', '1'],
    ['unread > a', 'missing unread'],
    ['a / dead > 1', 'undefined'],
  ])('"%s" gives %s', (text, found) => {
    expect(computed(text)).toBe(found);
  });

  test.each([
    'a < b < c',
    '(a < b)',
    'max(a < b, c)',
    '1 + (a > b)',
    'a <',
    '> a',
    'a == b',
    'a = b',
    'a <> b',
  ])('is refused as "%s", because it stands once and at the top', (text) => {
    expect(computed(text)).toBe('formula-syntax');
  });

  test('is refused where a value is wanted', () => {
    expect(parseFormula('a < b')).toMatchObject({
      ok: false,
      problems: [{ code: 'formula-syntax', found: '<', from: 2, to: 3 }],
    });
  });

  test('of unlike units is refused with both places', () => {
    const parsed = parseFormula('vcc * 2 > bus', { comparison: true });
    if (!parsed.ok) throw new Error('Expected a formula');
    const units = new Map([
      ['vcc', dimensionOf('V')],
      ['bus', dimensionOf('Hz')],
    ]);
    expect(checkFormula(parsed.value, units)).toEqual({
      ok: false,
      problems: [
        {
          code: 'unlike-units',
          from: 0,
          to: 7,
          related: { from: 10, to: 13 },
          left: 'V',
          right: 'Hz',
          leftText: 'vcc * 2',
          rightText: 'bus',
        },
      ],
    });
  });
});

describe('factor() and spread()', () => {
  // Computed by hand from the definitions: median, and (largest − smallest) / median.
  test.each([
    ['factor(b, b, a)', '63/100'],
    ['factor(a, c)', '3/2'],
    ['factor(a, b, c, c)', '3/2'],
    ['spread(b, b)', '0'],
    ['spread(a, b, c)', '137/100'],
    ['spread(a, c)', '2/3'],
    ['spread(-1, 0.5, 1.5)', '5'],
  ])('%s is %s', (text, found) => {
    expect(computed(text)).toBe(found);
  });

  test.each([
    ['factor(b, dead, b)', '63/100'],
    ['factor(b, unread / 2, b)', '63/100'],
    ['factor(b, a / dead, b)', '63/100'],
    ['spread(a, dead, unread, a)', '0'],
    ['factor(b, unread, unasked)', 'missing unread unasked'],
    ['factor(b, dead)', 'undefined'],
    ['spread(dead, a / dead)', 'undefined'],
    ['spread(-1, 1)', 'undefined'],
    ['factor(a, c) + unread', 'missing unread'],
  ])('%s leaves out what is zero or not known: %s', (text, found) => {
    expect(computed(text)).toBe(found);
  });

  const ratio = fc.tuple(fc.integer({ min: 1, max: 999 }), fc.integer({ min: 1, max: 99 }));
  const written = (ratios: readonly (readonly [number, number])[]) =>
    ratios.map(([n, d]) => `${n} / ${d}`).join(', ');

  test('a common ratio moves the factor and leaves the spread as it is', () => {
    fc.assert(
      fc.property(fc.array(ratio, { minLength: 2, maxLength: 16 }), ratio, (ratios, [n, d]) => {
        const moved = ratios.map(([a, b]) => [a * n, b * d] as const);
        const factor = new Fraction(computed(`factor(${written(ratios)})`));
        expect(computed(`factor(${written(moved)})`)).toBe(factor.mul(n).div(d).toFraction());
        expect(computed(`spread(${written(moved)})`)).toBe(computed(`spread(${written(ratios)})`));
      }),
    );
  });

  test('their order does not matter, and the factor lies among the ratios', () => {
    fc.assert(
      fc.property(fc.array(ratio, { minLength: 2, maxLength: 16 }), (ratios) => {
        const turned = ratios.toReversed();
        expect(computed(`factor(${written(turned)})`)).toBe(computed(`factor(${written(ratios)})`));
        expect(computed(`spread(${written(turned)})`)).toBe(computed(`spread(${written(ratios)})`));
        const factor = new Fraction(computed(`factor(${written(ratios)})`));
        const all = ratios.map(([n, d]) => new Fraction(n, d));
        expect(all.some((one) => one.lte(factor))).toBe(true);
        expect(all.some((one) => one.gte(factor))).toBe(true);
      }),
    );
  });
});
