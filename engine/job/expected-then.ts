import type { Observation } from '../model/observation.ts';
import type { Reading } from '../model/reading.ts';
import { printQuantity } from '../quantity/index.ts';
import type { Session } from '../run/index.ts';
import { expectedText, normalBandsOf } from '../scale/index.ts';

/** What a reading should have shown when it was taken: by the limits that were used then, else by
 *  the present settings. */
export function expectedThen(session: Session, reading: Reading, observation: Observation | null): string {
  if (reading.normal === 'any') return '';
  const used = observation?.used ?? null;
  if (used === null) return expectedText(reading, session.settings);
  const normal = normalBandsOf(reading);
  const first = used.bands.findIndex((band) => normal.includes(band));
  const last = used.bands.findLastIndex((band) => normal.includes(band));
  const low = used.limits[first - 1];
  const high = used.limits[last];
  if (low && high) return `${printQuantity(low)} .. ${printQuantity(high)}`;
  if (low) return `at least ${printQuantity(low)}`;
  return high ? `at most ${printQuantity(high)}` : 'any value';
}
