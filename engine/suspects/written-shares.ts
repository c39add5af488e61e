import type { Fault, Share } from '../model/fault.ts';
import type { Reading } from '../model/reading.ts';
import { oneOfMany } from '../names/one-of-many.ts';
import { bandsOf } from '../scale/index.ts';

/** What a fault's author wrote about a reading. */
export interface Written {
  /** The reading it was written for: this one, or the one that this one is `like`. */
  readonly origin: string;
  readonly shares: readonly Share[];
}

/** What a fault says of a reading: of itself, or of what it is `like`, nearest first. Null where it says nothing. One of
 *  many alike that is followed because of its band shows that band, unless the author says otherwise. */
export function writtenShares(
  reading: Reading,
  readings: ReadonlyMap<string, Reading>,
  fault: Fault,
): Written | null {
  const seen = new Set<string>();
  const own = bandsOf(reading);
  for (
    let at: Reading | undefined = reading;
    at !== undefined && !seen.has(at.id);
    at = readings.get(at.like ?? '')
  ) {
    seen.add(at.id);
    const { id } = at;
    const written = fault.shows.find((shows) => shows.reading === id)?.shares ?? sharesFound(id);
    if (written === null) continue;
    const shares = written.filter(({ share }) => share > 0);
    const known = at === reading || shares.every(({ band }) => own.includes(band));
    return known ? { origin: id, shares } : null;
  }
  return null;
}

function sharesFound(id: string): readonly Share[] | null {
  const one = oneOfMany(id);
  return one === null ? null : [{ band: one.band, share: 1 }];
}
