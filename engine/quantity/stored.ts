import type Fraction from 'fraction.js';
import type { StoredQuantity } from '../model/exact.ts';
import { exactOf, fractionOf } from './exact.ts';

/** @param base the value in the base unit: hertz for `MHz`, °C for `°F`, a plain ratio for `%`
 *  @param unit canonical, as it is to be printed */
export const toStored = (base: Fraction, unit: string): StoredQuantity => ({ value: exactOf(base), unit });

/** The value in the base unit. */
export const fromStored = (stored: StoredQuantity): Fraction => fractionOf(stored.value);

/** Negative, zero or positive, like a sort function. Meant for quantities of one kind. */
export const compareQuantities = (a: StoredQuantity, b: StoredQuantity): number =>
  fromStored(a).compare(fromStored(b));
