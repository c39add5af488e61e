import Fraction from 'fraction.js';
import type { Exact } from '../model/exact.ts';

/** `315/88` as a number to compute with. The text is our own: digits, with a sign and one slash at most. */
export function fractionOf(exact: Exact): Fraction {
  const slash = exact.indexOf('/');
  return slash < 0
    ? new Fraction(BigInt(exact))
    : new Fraction(BigInt(exact.slice(0, slash)), BigInt(exact.slice(slash + 1)));
}

export const exactOf = (value: Fraction): Exact => value.toFraction();
