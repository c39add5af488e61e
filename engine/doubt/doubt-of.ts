import Fraction from 'fraction.js';
import type { StoredQuantity } from '../model/exact.ts';
import type { Equipment } from '../model/instrument.ts';
import type { Doubt, Observation } from '../model/observation.ts';
import type { Reading } from '../model/reading.ts';
import type { ResolvedScale } from '../model/resolved-scale.ts';
import { baseUnit, fractionOf, fromStored, withPrefix } from '../quantity/index.ts';
import { plusMinusFor } from './plus-minus-of.ts';

/** How far a value can lie from what the instrument showed, and in which bands; null where nothing is known of an
 *  instrument for it. */
export function doubtOf(
  reading: Pick<Reading, 'with'>,
  resolved: ResolvedScale,
  value: StoredQuantity,
  equipment: Equipment,
): Doubt | null {
  const found = plusMinusFor(reading, value, equipment);
  if (found === null || found.value.n === 0n || resolved.contradiction !== null) return null;
  return {
    instrument: found.instrument.name,
    plusMinus: withPrefix(found.value, baseUnit(value.unit)),
    shares: sharesOf(resolved, fromStored(value), found.value),
  };
}

/** A reading that its instrument cannot tell to one side of a limit. */
export const isTooClose = ({ doubt }: Pick<Observation, 'doubt'>): boolean =>
  doubt !== null && doubt.shares.length > 1;

const zero = new Fraction(0);
const one = new Fraction(1);

/** The part of the possible values in each band that holds any, no value likelier than another (a rectangular distribution).
 *
 *      bands      low      |     good      |    high
 *      values         ·····|··v·······           → low 0.4, good 0.6
 *
 *  A limit that is itself in doubt, because it rests on a reading of a known-good board, adds its own width. Bands on both
 *  sides of a limit that is not known share alike.
 *  @param value in the base unit
 *  @param a half the width of what is possible, more than 0 */
export function sharesOf(
  { bands, limits, limitDoubts }: ResolvedScale,
  value: Fraction,
  a: Fraction,
): Doubt['shares'] {
  const shares: { band: string; share: number }[] = [];
  let run: string[] = [];
  let below = zero;
  const close = (upTo: Fraction): void => {
    const share = upTo.sub(below).div(run.length);
    if (share.gt(0)) shares.push(...run.map((band) => ({ band, share: share.valueOf() })));
    below = upTo;
    run = [];
  };
  for (const [at, band] of bands.entries()) {
    run.push(band);
    const limit = limits[at] ?? null;
    if (limit === null) continue;
    const width = a.add(fractionOf(limitDoubts[at] ?? '0'));
    const under = fromStored(limit).sub(value).add(width).div(width.mul(2));
    close(under.lt(below) ? below : under.gt(one) ? one : under);
  }
  close(one);
  return shares;
}
