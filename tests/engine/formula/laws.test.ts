import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { checkFormula, evaluateFormula, parseFormula } from '../../../engine/formula/index.ts';

/** An expression as a text with as few brackets as its meaning allows, and what it comes to. */
interface Sample {
  readonly text: string;
  /** How tightly it holds together: a sum 1, a product 2, the rest 3. */
  readonly power: 1 | 2 | 3;
  readonly value: Fraction | null;
}

const names: Readonly<Record<string, Fraction>> = {
  a: new Fraction(7, 3),
  b: new Fraction(-2),
  zero: new Fraction(0),
};

const bracketed = ({ text, power }: Sample, least: number): string => (power < least ? `(${text})` : text);

const operators = {
  '+': { power: 1, apply: (a: Fraction, b: Fraction) => a.add(b) },
  '-': { power: 1, apply: (a: Fraction, b: Fraction) => a.sub(b) },
  '*': { power: 2, apply: (a: Fraction, b: Fraction) => a.mul(b) },
  '/': { power: 2, apply: (a: Fraction, b: Fraction) => (b.n === 0n ? null : a.div(b)) },
} as const;

const { sample } = fc.letrec<{ sample: Sample }>((tie) => ({
  sample: fc.oneof(
    { maxDepth: 4, withCrossShrink: true },
    fc.nat({ max: 999 }).map((n): Sample => ({ text: `${n / 10}`, power: 3, value: new Fraction(n, 10) })),
    fc
      .constantFrom(...Object.keys(names))
      .map((name): Sample => ({ text: name, power: 3, value: names[name] ?? null })),
    fc
      .tuple(fc.constantFrom('+', '-', '*', '/'), tie('sample'), tie('sample'))
      .map(([sign, left, right]): Sample => {
        const { power, apply } = operators[sign];
        return {
          text: `${bracketed(left, power)} ${sign} ${bracketed(right, power + 1)}`,
          power,
          value: left.value && right.value && apply(left.value, right.value),
        };
      }),
    tie('sample').map(
      (of): Sample => ({ text: `-${bracketed(of, 3)}`, power: 3, value: of.value?.neg() ?? null }),
    ),
    fc.array(tie('sample'), { minLength: 1, maxLength: 3 }).map((args): Sample => {
      const values = args.flatMap(({ value }) => (value === null ? [] : [value]));
      const most = values.reduce((a, b) => (a?.gt(b) ? a : b), values[0] ?? null);
      return {
        text: `max(${args.map(({ text }) => text).join(', ')})`,
        power: 3,
        value: values.length < args.length ? null : most,
      };
    }),
  ),
}));

const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc
    .array(
      fc.constantFrom(
        '1',
        '2.5',
        '(',
        ')',
        '+',
        '-',
        '*',
        '/',
        ',',
        ' ',
        'a',
        'min',
        'max(',
        'V',
        ' MHz',
        '%',
        '−',
        '4k7',
        '1e5',
        '.',
        '°C',
        ' dc',
      ),
      { maxLength: 20 },
    )
    .map((parts) => parts.join('')),
);

describe('the laws of formulas', () => {
  test('a formula means what its brackets and the usual order of operations say', () => {
    fc.assert(
      fc.property(sample, ({ text, value }) => {
        fc.pre(text.length <= 500);
        const parsed = parseFormula(text);
        if (!parsed.ok) throw new Error(`Expected a formula: ${text} ${JSON.stringify(parsed.problems)}`);
        const given = evaluateFormula(parsed.value, (name) => names[name] ?? null);
        if (value === null) expect(given).toEqual({ kind: 'undefined' });
        else expect(given.kind === 'value' && given.value.equals(value)).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  test('parsing, checking and evaluating never throw, and problems lie inside the text', () => {
    fc.assert(
      fc.property(anyText, fc.nat({ max: 50 }), (text, at) => {
        const parsed = parseFormula(text, { at });
        const problems = parsed.ok ? [] : [...parsed.problems];
        if (parsed.ok) {
          const checked = checkFormula(parsed.value, new Map([['b', null]]));
          problems.push(...(checked.ok ? [] : checked.problems));
          expect(evaluateFormula(parsed.value, () => new Fraction(0)).kind).not.toBe('missing');
        } else expect(problems.length).toBeGreaterThan(0);
        for (const { from, to } of problems)
          expect(at <= from && from <= to && to <= at + text.length).toBe(true);
      }),
      { numRuns: 4000 },
    );
  });

  test('the same text gives the same formula, and a formula survives storing', () => {
    fc.assert(
      fc.property(sample, ({ text }) => {
        const [once, again] = [parseFormula(text), parseFormula(text)];
        expect(again).toEqual(once);
        expect(JSON.parse(JSON.stringify(once))).toEqual(once);
      }),
    );
  });
});
