import Fraction from 'fraction.js';
import { baseUnit, fractionOf, storedUnit, withPrefix } from '../quantity/index.ts';

/** Digits of a value that no instrument is known for. */
const figures = 4;

/** A value as an instrument shows it: rounded to its last digit, in the unit that technicians use for it.
 *  @param size in the base unit
 *  @param unit the reading's own: `MHz`
 *  @param step what the last digit is worth, in the base unit; null where no instrument is known */
export function asShown(size: number, unit: string, step: number | null): string {
  const own = storedUnit(unit);
  const scaled = Math.abs(inUnit(size, unit));
  const isHandy = size === 0 || own.row.prefixes === '' || (scaled >= 0.01 && scaled < 10000);
  const shownIn = isHandy ? unit : withPrefix(new Fraction(size), baseUnit(unit)).unit;
  const factor = storedUnit(shownIn).factor.valueOf();
  const value = inUnit(size, shownIn);
  const least = step === null ? leastOf(value) : step / factor;
  const rounded = least > 0 ? Math.round(value / least) * least : value;
  const text = rounded.toFixed(placesOf(least));
  return `${text === '-0' ? '0' : text}${shownIn === '' ? '' : ` ${storedUnit(shownIn).text}`}`;
}

/** What the last of four figures is worth. */
const leastOf = (value: number): number =>
  value === 0 ? 0 : 10 ** (Math.floor(Math.log10(Math.abs(value))) - figures + 1);

const placesOf = (least: number): number =>
  least > 0 ? Math.min(12, Math.max(0, -Math.floor(Math.log10(least) + 1e-9))) : 0;

function inUnit(size: number, unit: string): number {
  const { factor, offset } = storedUnit(unit);
  return (size - offset.valueOf()) / factor.valueOf();
}

export const stepOf = (resolution: string): number | null =>
  resolution === '0' ? null : fractionOf(resolution).valueOf();
