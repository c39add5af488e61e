import type { FaultSection } from '../model/section.ts';
import { normalBandsOf } from '../scale/index.ts';
import type { Known } from './known.ts';
import type { Session } from './session.ts';
import { takenFor } from './taken-for.ts';
import { wordsOn } from './words-on.ts';

/** What has to be read again after a remedy: the section's own list, and every reading that was out of
 *  normal before the remedy and has not been seen good since. What is computed needs what it is computed from. */
export function proofReadings(session: Session, section: FaultSection): readonly string[] {
  const wrong = [...session.history.keys()].filter(
    (id) => !section.proof.includes(id) && standing(session, id, beforeRemedy(session, id)) === 'wrong',
  );
  const listed = [...section.proof, ...wrong];
  const { derived, readings } = session.loaded;
  if (!derived.some(({ id }) => listed.includes(id))) return listed;
  const inputs = listed.flatMap((id) => {
    const reading = readings.get(id);
    return reading === undefined || reading.from === null ? [] : takenFor(session, reading);
  });
  return [...new Set([...inputs.map(({ id }) => id), ...listed])];
}

/** The last word on a reading from before the present remedy. */
export function beforeRemedy(session: Session, reading: string): Known | null {
  const done = session.position.remedies.length;
  return wordsOn(session, reading).findLast((known) => known.remedies < done && !known.stale) ?? null;
}

/** Whether what is known of a reading is normal, wrong, or leaves both open. */
export function standing(
  session: Session,
  reading: string,
  known: Pick<Known, 'bands'> | null,
): 'normal' | 'wrong' | 'open' {
  const found = session.loaded.readings.get(reading);
  if (found === undefined || found.normal === 'any' || known === null || known.bands.length === 0)
    return 'open';
  const normal = normalBandsOf(found);
  const inside = known.bands.filter((band) => normal.includes(band)).length;
  if (inside === known.bands.length) return 'normal';
  return inside === 0 ? 'wrong' : 'open';
}
