import type Fraction from 'fraction.js';
import type { StoredQuantity } from '../model/exact.ts';
import type { Equipment, Instrument, InstrumentRange } from '../model/instrument.ts';
import type { Reading } from '../model/reading.ts';
import { baseUnit, fractionOf, fromStored, storedUnit } from '../quantity/index.ts';

/** How far a value can lie from what an instrument showed. */
export interface PlusMinus {
  readonly instrument: Instrument;
  readonly range: InstrumentRange;
  /** Half the width of what is possible, in the base unit. */
  readonly value: Fraction;
  /** The part of it that counts in digits, which an average of several readings shrinks. */
  readonly digits: Fraction;
}

/** Ranges for this kind of value that hold it, smallest first. */
export function rangesFor({ ranges }: Instrument, value: StoredQuantity): readonly InstrumentRange[] {
  const size = fromStored(value).abs();
  return ranges
    .filter((range) => isOfKind(range, value.unit) && fractionOf(range.upTo).gte(size))
    .sort((a, b) => fractionOf(a.upTo).compare(fractionOf(b.upTo)));
}

/** A voltage without a word is a dc voltage. */
function isOfKind(range: InstrumentRange, unit: string): boolean {
  const [a, b] = [storedUnit(baseUnit(range.unit)), storedUnit(baseUnit(unit))];
  const kind = (qualifier: string): string => qualifier || 'dc';
  return a.row.family === b.row.family && kind(a.qualifier) === kind(b.qualifier);
}

/** ± (of reading + of range + digits × resolution). */
export function plusMinusIn(
  instrument: Instrument,
  range: InstrumentRange,
  value: StoredQuantity,
): PlusMinus {
  const digits = fractionOf(range.resolution).mul(range.digits);
  const ofReading = fromStored(value).abs().mul(fractionOf(range.ofReading));
  const ofRange = fractionOf(range.upTo).mul(fractionOf(range.ofRange));
  return { instrument, range, value: ofReading.add(ofRange).add(digits), digits };
}

/** In the smallest range that holds the value; null where the instrument does not measure such a value. */
export function plusMinusOf(instrument: Instrument, value: StoredQuantity): PlusMinus | null {
  const [range] = rangesFor(instrument, value);
  return range === undefined ? null : plusMinusIn(instrument, range, value);
}

/** By the first of the technician's instruments that the reading asks for and that holds the value. */
export function plusMinusFor(
  reading: Pick<Reading, 'with'>,
  value: StoredQuantity,
  { instruments }: Equipment,
): PlusMinus | null {
  for (const instrument of instruments) {
    if (reading.with.length > 0 && !reading.with.includes(instrument.tool)) continue;
    const found = plusMinusOf(instrument, value);
    if (found !== null) return found;
  }
  return null;
}
