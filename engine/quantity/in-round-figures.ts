import Fraction from 'fraction.js';
import type { StoredQuantity } from '../model/exact.ts';
import { exactOf } from './exact.ts';
import { fromStored } from './stored.ts';

/** Figures that a bench can tell apart. */
const figures = 3;

/** A quantity rounded to what is worth showing: 0.751 for 0.750751. */
export const inRoundFigures = ({ value, unit }: StoredQuantity): StoredQuantity => ({
  value: exactOf(new Fraction(Number(fromStored({ value, unit }).valueOf().toPrecision(figures)))),
  unit,
});
