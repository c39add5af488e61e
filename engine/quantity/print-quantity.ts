import type { StoredQuantity } from '../model/exact.ts';
import { storedUnit } from './parse-unit.ts';
import { printNumber } from './print-number.ts';
import { fromStored } from './stored.ts';
import { fromBase } from './unit.ts';

/** @example quantityParts({ value: '25200000', unit: 'MHz' }) → { number: '25.2', unit: 'MHz' } */
export function quantityParts(stored: StoredQuantity): { readonly number: string; readonly unit: string } {
  const unit = storedUnit(stored.unit);
  return { number: printNumber(fromBase(unit, fromStored(stored))), unit: unit.text };
}

/** `25.2 MHz`, `-12 V`, `4.7 kΩ`; a value that has no short decimal form is rounded to six digits. */
export function printQuantity(stored: StoredQuantity): string {
  const { number, unit } = quantityParts(stored);
  return unit === '' ? number : `${number} ${unit}`;
}
