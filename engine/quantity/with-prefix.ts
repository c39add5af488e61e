import Fraction from 'fraction.js';
import type { StoredQuantity } from '../model/exact.ts';
import { storedUnit } from './parse-unit.ts';
import { toStored } from './stored.ts';
import { prefixesOf, unitOf } from './unit.ts';

const thousand = new Fraction(1000);

/** A value with the prefix that makes its number short: 0.01775 V is 17.75 mV.
 *  @param base in the base unit
 *  @param unit any unit of its kind */
export function withPrefix(base: Fraction, unit: string): StoredQuantity {
  const { row, qualifier } = storedUnit(unit);
  const units = prefixesOf(row)
    .map((prefix) => unitOf(row, prefix, qualifier))
    .sort((a, b) => b.factor.compare(a.factor));
  const fitting = units.find(({ factor }) => base.abs().gte(factor)) ?? units.at(-1);
  const plain = units.find(({ prefix }) => prefix === '');
  const isPlain =
    base.n === 0n || (plain && base.abs().gte(plain.factor) && base.abs().lt(plain.factor.mul(thousand)));
  return toStored(base, (isPlain ? plain : fitting)?.text ?? unit);
}
