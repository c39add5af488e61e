import Fraction from 'fraction.js';
import type { StoredQuantity } from '../../engine/model/exact.ts';
import { exactOf, fractionOf } from '../../engine/quantity/index.ts';

/** How far a value can be off, with the two digits that count. */
export const twoDigits = ({ value, unit }: StoredQuantity): StoredQuantity => ({
  value: exactOf(new Fraction(fractionOf(value).valueOf().toPrecision(2))),
  unit,
});
