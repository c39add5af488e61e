import type Fraction from 'fraction.js';
import type { StoredQuantity } from '../model/exact.ts';
import { exactOf, fractionOf } from './exact.ts';

/** Every judgement asks the same few settings and limits for their value; quantities never change. */
const fractions = new WeakMap<StoredQuantity, Fraction>();

/** @param base the value in the base unit: hertz for `MHz`, °C for `°F`, a plain ratio for `%`
 *  @param unit canonical, as it is to be printed */
export function toStored(base: Fraction, unit: string): StoredQuantity {
  const stored = { value: exactOf(base), unit };
  fractions.set(stored, base);
  return stored;
}

/** The value in the base unit. */
export function fromStored(stored: StoredQuantity): Fraction {
  const known = fractions.get(stored) ?? fractionOf(stored.value);
  fractions.set(stored, known);
  return known;
}
