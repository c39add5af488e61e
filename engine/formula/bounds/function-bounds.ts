import Fraction from 'fraction.js';
import { factorBounds, spreadBounds } from './alike-ratios.ts';
import { divided, negated } from './arithmetic.ts';
import { anything, type Bounds } from './bounds.ts';
import { greatest, higherOf, least } from './extremes.ts';

/** What a function gives for arguments that are known by their bounds. */
type BoundsRule = (args: readonly Bounds[]) => Bounds;

/** One row for each function that formulas have. */
const table: Readonly<Record<string, BoundsRule>> = {
  min: least,
  max: greatest,
  abs: ([of = anything]) => size(of),
  ratio: ([a = anything, b = anything]) => divided(a, b),
  factor: factorBounds,
  spread: spreadBounds,
};

export function functionBounds(name: string, args: readonly Bounds[]): Bounds {
  const rule = Object.hasOwn(table, name) ? table[name] : undefined;
  return rule === undefined || args.length === 0 ? anything : rule(args);
}

function size(of: Bounds): Bounds {
  const { low, high } = of;
  if (low !== null && low.value.compare(0) >= 0) return of;
  const turned = negated(of);
  if (high !== null && high.value.compare(0) <= 0) return turned;
  return { ...of, low: { value: new Fraction(0), closed: true }, high: higherOf(high, turned.high) };
}
