import type { Reading } from '../model/reading.ts';
import { knownNow } from './known-now.ts';
import type { Session } from './session.ts';

/** Whether something that a reading needs is known to be missing, so that it says nothing. What a needed reading needs in turn
 *  counts as long as that one has not been seen itself. */
export function isHidden(session: Session, { needs }: Reading, above: readonly string[] = []): boolean {
  return needs.some(({ reading: id, bands }) => {
    const known = knownNow(session, id);
    if (known !== null && known.bands.length > 0) return !known.bands.some((band) => bands.includes(band));
    const needed = session.loaded.readings.get(id);
    return needed !== undefined && !above.includes(id) && isHidden(session, needed, [...above, id]);
  });
}
