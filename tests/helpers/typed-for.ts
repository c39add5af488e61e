import Fraction from 'fraction.js';
import type { Reading } from '../../engine/model/reading.ts';
import { exactOf, fromStored, printQuantity } from '../../engine/quantity/index.ts';
import type { Session } from '../../engine/run/index.ts';
import { resolveScale } from '../../engine/scale/index.ts';

/** What a technician would type for a reading that lies in `band`: the option's name, a code, or a value in the
 *  middle of the band at the present settings. */
export function typedFor(session: Session, reading: Reading, band: string): string {
  const { measure } = reading;
  if (measure.kind === 'options') return band;
  if (measure.kind === 'codes') return measure.ranges.find((range) => range.band === band)?.from ?? 'EE';
  const { bands, limits, unit } = resolveScale(reading, session);
  const at = bands.indexOf(band);
  const [low, high] = [limits[at - 1], limits[at]].map((limit) => (limit ? fromStored(limit) : null));
  const value = middle(low ?? null, high ?? null);
  return printQuantity({ value: exactOf(value), unit });
}

function middle(low: Fraction | null, high: Fraction | null): Fraction {
  if (low !== null && high !== null) return low.add(high).div(2);
  if (high !== null) return high.compare(0) > 0 ? high.div(2) : high.mul(2).sub(1);
  if (low !== null) return low.compare(0) > 0 ? low.mul(2) : low.div(2).add(1);
  return new Fraction(1);
}
