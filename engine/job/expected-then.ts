import type { Observation } from '../model/observation.ts';
import type { Reading } from '../model/reading.ts';
import type { Session } from '../run/index.ts';
import { expectedText, normalBandsOf, rangesText } from '../scale/index.ts';

/** What a reading should have shown when it was taken: by the limits that were used then, else by
 *  the present settings. */
export function expectedThen(session: Session, reading: Reading, observation: Observation | null): string {
  if (reading.normal === 'any') return '';
  const used = observation?.used ?? null;
  return used === null ? expectedText(reading, session) : rangesText(used, normalBandsOf(reading));
}
