import Fraction from 'fraction.js';
import type { StoredQuantity } from '../model/exact.ts';
import type { Equipment } from '../model/instrument.ts';
import type { Reading } from '../model/reading.ts';
import type { ResolvedScale } from '../model/resolved-scale.ts';
import { baseUnit, fractionOf, fromStored, withPrefix } from '../quantity/index.ts';
import { sharesOf } from './doubt-of.ts';
import { type PlusMinus, plusMinusFor, plusMinusIn, plusMinusOf, rangesFor } from './plus-minus-of.ts';
import type { Settler } from './settler.ts';

/** Whoever averages more readings than this does not. */
const mostReadings = 30;

/** What would settle one value, the least trouble first. */
export function settlersOfValue(
  reading: Pick<Reading, 'with'>,
  resolved: ResolvedScale,
  quantity: StoredQuantity,
  bands: readonly string[],
  equipment: Equipment,
): readonly Settler[] {
  const unknown = missingIn(resolved, bands);
  if (unknown.length > 0) return unknown;
  const used = plusMinusFor(reading, quantity, equipment);
  const isSettled = (a: Fraction): boolean =>
    a.n === 0n || sharesOf(resolved, fromStored(quantity), a).length === 1;
  if (used === null || isSettled(used.value)) return [];
  const off = (a: Fraction): StoredQuantity => withPrefix(a, baseUnit(quantity.unit));
  const ranges = rangesFor(used.instrument, quantity)
    .filter((range) => range !== used.range)
    .map((range) => plusMinusIn(used.instrument, range, quantity))
    .filter(({ value }) => isSettled(value))
    .map(({ instrument, range, value }): Settler => {
      const upTo = withPrefix(fractionOf(range.upTo), range.unit);
      return { kind: 'range', instrument: instrument.name, upTo, plusMinus: off(value) };
    });
  const others = equipment.instruments
    .filter((instrument) => instrument !== used.instrument)
    .map((instrument) => plusMinusOf(instrument, quantity))
    .filter((found) => found !== null && isSettled(found.value))
    .map((found): Settler => {
      const { instrument, value } = found as PlusMinus;
      return { kind: 'instrument', instrument: instrument.name, plusMinus: off(value) };
    });
  return [...ranges, ...others, ...averages(used, isSettled, off)];
}

/** The settings, or the known-good board, behind limits that are not known, where the bands beside one are open. */
function missingIn(
  { limits, bands: all, missing }: ResolvedScale,
  bands: readonly string[],
): readonly Settler[] {
  const open = limits.some(
    (limit, at) => limit === null && bands.includes(all[at] ?? '') && bands.includes(all[at + 1] ?? ''),
  );
  if (!open) return [];
  return missing.map((name) => (name === 'twin' ? { kind: 'twin' } : { kind: 'setting', setting: name }));
}

/** The mean of n readings: what counts in digits shrinks with √n, what counts from the reading or the range does not. */
function averages(
  { value, digits }: PlusMinus,
  isSettled: (a: Fraction) => boolean,
  off: (a: Fraction) => StoredQuantity,
): readonly Settler[] {
  if (digits.n === 0n) return [];
  for (let of = 2; of <= mostReadings; of += 1) {
    const mean = value.sub(digits).add(shortened(digits.valueOf() / Math.sqrt(of)));
    if (isSettled(mean)) return [{ kind: 'average', of, plusMinus: off(mean) }];
  }
  return [];
}

/** A root is no fraction: six digits of it are kept, rounded up. */
function shortened(value: number): Fraction {
  const power = 5 - Math.floor(Math.log10(value));
  const whole = BigInt(Math.ceil(value * 10 ** power - 1e-6));
  return power < 0 ? new Fraction(whole * 10n ** BigInt(-power)) : new Fraction(whole, 10n ** BigInt(power));
}
