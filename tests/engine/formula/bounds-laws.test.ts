import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { functionNames } from '../../../engine/formula/functions/index.ts';
import {
  anything,
  type Bounds,
  boundsOf,
  type End,
  evaluateFormula,
  exactly,
  noValue,
  parseFormula,
} from '../../../engine/formula/index.ts';
import type { Formula } from '../../../engine/model/formula.ts';

const names = ['a', 'b', 'c'];

const value = fc
  .tuple(fc.integer({ min: -12, max: 12 }), fc.constantFrom(1, 2, 3, 5))
  .map(([n, d]) => new Fraction(n, d));

const { formula } = fc.letrec<{ formula: Formula }>((tie) => ({
  formula: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    fc.constantFrom(...names).map((name): Formula => ({ kind: 'name', name })),
    value.map((one): Formula => ({ kind: 'quantity', value: one.toFraction(), unit: '' })),
    tie('formula').map((of): Formula => ({ kind: 'negate', of })),
    fc
      .tuple(fc.constantFrom('+', '-', '*', '/'), tie('formula'), tie('formula'))
      .map(([operator, left, right]): Formula => ({ kind: 'binary', operator, left, right })),
    fc
      .tuple(
        fc.constantFrom('min', 'max', 'factor', 'spread'),
        fc.array(tie('formula'), { minLength: 2, maxLength: 4 }),
      )
      .map(([name, args]): Formula => ({ kind: 'call', name, arguments: args })),
    tie('formula').map((of): Formula => ({ kind: 'call', name: 'abs', arguments: [of] })),
    fc
      .tuple(tie('formula'), tie('formula'))
      .map((args): Formula => ({ kind: 'call', name: 'ratio', arguments: args })),
  ),
}));

const comparison = fc
  .tuple(fc.constantFrom('<', '>', '<=', '>='), formula, formula)
  .map(([operator, left, right]): Formula => ({ kind: 'compare', operator, left, right }));

/** What is known of a name, and one value that it can have (none: it was not taken). */
interface Drawn {
  readonly bounds: Bounds;
  readonly value: Fraction | null;
}

const known: fc.Arbitrary<Drawn> = fc
  .tuple(value, value, value, fc.constantFrom('point', 'closed', 'open', 'below', 'above', 'any', 'none'))
  .map(([a, b, c, shape]): Drawn => {
    const [low, middle, high] = [a, b, c].sort((x, y) => x.compare(y)) as [Fraction, Fraction, Fraction];
    const end = (at: Fraction, closed: boolean): End => ({ value: at, closed });
    const sure = { value: 'sure', dark: 'no' } as const;
    const open = low.lt(middle) && middle.lt(high);
    switch (shape) {
      case 'point':
        return { bounds: exactly(middle), value: middle };
      case 'open':
        return { bounds: { low: end(low, !open), high: end(high, !open), ...sure }, value: middle };
      case 'below':
        return { bounds: { low: null, high: end(high, true), ...sure }, value: middle };
      case 'above':
        return { bounds: { low: end(low, true), high: null, ...sure }, value: middle };
      case 'any':
        return { bounds: anything, value: middle };
      case 'none':
        return { bounds: noValue, value: null };
      default:
        return { bounds: { low: end(low, true), high: end(high, true), ...sure }, value: middle };
    }
  });

const world = fc.tuple(known, known, known);

const within = ({ low, high }: Bounds, at: Fraction): boolean =>
  (low === null || low.value.lt(at) || (low.closed && low.value.equals(at))) &&
  (high === null || high.value.gt(at) || (high.closed && high.value.equals(at)));

const evaluated = (of: Formula, drawn: readonly Drawn[]) =>
  evaluateFormula(of, (name) => drawn[names.indexOf(name)]?.value ?? null);

const bounded = (of: Formula, drawn: readonly Drawn[]) =>
  boundsOf(of, (name) => drawn[names.indexOf(name)]?.bounds ?? noValue);

describe('the laws of formulas over intervals', () => {
  test('no value that a formula can have lies outside its bounds', () => {
    fc.assert(
      fc.property(fc.oneof(formula, comparison), world, (of, drawn) => {
        const found = evaluated(of, drawn);
        const bounds = bounded(of, drawn);
        if (found.kind === 'value') {
          expect(bounds.value).not.toBe('none');
          expect(within(bounds, found.value)).toBe(true);
        } else {
          expect(bounds.value).not.toBe('sure');
        }
      }),
      { numRuns: 20_000 },
    );
  });

  test('where every name has one value, the bounds are that of the formula, exactly', () => {
    fc.assert(
      fc.property(fc.oneof(formula, comparison), fc.tuple(value, value, value), (of, values) => {
        const drawn = values.map((one) => ({ bounds: exactly(one), value: one }));
        const found = evaluated(of, drawn);
        const bounds = bounded(of, drawn);
        if (found.kind !== 'value') {
          expect(bounds.value).toBe('none');
          return;
        }
        expect(bounds.value).toBe('sure');
        expect([bounds.low?.value.toFraction(), bounds.high?.value.toFraction()]).toEqual([
          found.value.toFraction(),
          found.value.toFraction(),
        ]);
        expect([bounds.low?.closed, bounds.high?.closed]).toEqual([true, true]);
      }),
      { numRuns: 5000 },
    );
  });

  test('wider inputs never make a result narrower', () => {
    const ends = fc.tuple(value, value).map((pair) => [...pair].sort((x, y) => x.compare(y)));
    fc.assert(
      fc.property(formula, ends, value, (of, [low, high], other) => {
        if (low === undefined || high === undefined) return;
        const end = (at: Fraction): End => ({ value: at, closed: true });
        const wide: Bounds = { low: end(low), high: end(high), value: 'sure', dark: 'no' };
        const at = (a: Bounds) => boundsOf(of, (name) => (name === 'a' ? a : exactly(other)));
        const whole = at(wide);
        for (const point of [low, high, low.add(high).div(2)]) {
          const part = at(exactly(point));
          if (part.value === 'sure') {
            for (const one of [part.low, part.high]) expect(one && within(whole, one.value)).toBe(true);
          }
        }
      }),
      { numRuns: 3000 },
    );
  });
});

describe('boundsOf()', () => {
  const interval = (low: number | null, high: number | null, closed = true): Bounds => ({
    low: low === null ? null : { value: new Fraction(low), closed },
    high: high === null ? null : { value: new Fraction(high), closed },
    value: 'sure',
    dark: 'no',
  });
  const of = (text: string, known: Readonly<Record<string, Bounds>>): string => {
    const parsed = parseFormula(text, { comparison: true });
    if (!parsed.ok) throw new Error(text);
    const { low, high, value } = boundsOf(parsed.value, (name) => known[name] ?? noValue);
    const side = low?.closed ? '[' : '(';
    const end = high?.closed ? ']' : ')';
    const range = `${side}${low?.value.toFraction() ?? ''}, ${high?.value.toFraction() ?? ''}${end}`;
    return value === 'sure' ? range : `${value} ${range}`;
  };

  const minusTwoToFive = interval(-2, 5);
  const oneAndMore = interval(1, null);
  const two = interval(2, 2);

  test.each([
    ['a + b', minusTwoToFive, two, '[0, 7]'],
    ['a - b', minusTwoToFive, two, '[-4, 3]'],
    ['-a', minusTwoToFive, two, '[-5, 2]'],
    ['a * b', minusTwoToFive, two, '[-4, 10]'],
    ['a * b', minusTwoToFive, oneAndMore, '(, )'],
    ['a / b', minusTwoToFive, oneAndMore, '[-2, 5]'],
    ['b / a', minusTwoToFive, two, 'perhaps (, )'],
    ['a / b', minusTwoToFive, interval(0, 0), 'none (, )'],
    ['a / b', two, interval(0, 4), 'perhaps [1/2, )'],
    ['a / b', two, oneAndMore, '(0, 2]'],
    ['abs(a)', minusTwoToFive, two, '[0, 5]'],
    ['abs(-b)', two, oneAndMore, '[1, )'],
    ['min(a, b)', minusTwoToFive, oneAndMore, '[-2, 5]'],
    ['max(a, b)', minusTwoToFive, oneAndMore, '[1, )'],
    ['max(a, b)', minusTwoToFive, interval(-3, -3), '[-2, 5]'],
  ])('finds what %s can be (%#)', (text, a, b, bounds) => {
    expect(of(text, { a, b })).toBe(bounds);
  });

  test('knows an open end from a closed one', () => {
    const open = interval(1, 2, false);
    expect(of('a + b', { a: open, b: interval(0, 1) })).toBe('(1, 3)');
    expect(of('a * b', { a: open, b: interval(0, 1) })).toBe('[0, 2)');
    expect(of('1 / a', { a: interval(0, 2, false) })).toBe('(1/2, )');
    expect(of('a > 2', { a: open })).toBe('[0, 0]');
    expect(of('a >= 2', { a: interval(1, 2) })).toBe('[0, 1]');
    expect(of('a < 2', { a: open })).toBe('[1, 1]');
  });

  test('takes the median of the ratios that count, and widens it by those that perhaps do', () => {
    const r = (low: number, high = low) => interval(low, high);
    expect(of('factor(a, b, c)', { a: r(1), b: r(2), c: r(4) })).toBe('[2, 2]');
    expect(of('factor(a, b, c)', { a: r(1), b: r(2), c: r(0) })).toBe('[3/2, 3/2]');
    expect(of('factor(a, b, c)', { a: r(1), b: r(2), c: r(0, 4) })).toBe('[1, 2]');
    expect(of('factor(a, b, c)', { a: r(1), b: r(2), c: noValue })).toBe('[3/2, 3/2]');
    expect(of('factor(a, b, c)', { a: r(1), b: r(2), c: { ...r(9), dark: 'yes' } })).toBe('[3/2, 3/2]');
    expect(of('factor(a, b, c)', { a: r(1), b: r(2), c: { ...r(9), dark: 'perhaps' } })).toBe('[3/2, 2]');
    expect(of('factor(a, b)', { a: r(1), b: r(0, 1) })).toBe('perhaps (, )');
    expect(of('factor(a, b)', { a: r(1), b: r(0) })).toBe('none (, )');
    expect(of('spread(a, b, c)', { a: r(1), b: r(2), c: r(4) })).toBe('[3/2, 3/2]');
    expect(of('spread(a, b)', { a: r(1, 2), b: r(2, 3) })).toBe('[0, 4/3]');
  });

  test('has a rule for every function that formulas have', () => {
    for (const name of functionNames) {
      const args = ['abs'].includes(name)
        ? [exactly(new Fraction(2))]
        : [2, 2].map((n) => exactly(new Fraction(n)));
      const call: Formula = {
        kind: 'call',
        name,
        arguments: args.map((_, at): Formula => ({ kind: 'name', name: `x${at}` })),
      };
      expect(boundsOf(call, (x) => args[Number(x.slice(1))] ?? noValue)).toMatchObject({ value: 'sure' });
    }
  });
});
