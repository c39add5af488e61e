import type { Path } from '../model/front-matter.ts';
import type { Reading } from '../model/reading.ts';
import { bandsOf } from '../scale/index.ts';
import { checkBand } from './check-band.ts';
import type { FactsContext } from './facts-context.ts';
import { oneOrMore, type RawTable } from './raw.ts';

/** The bands a healthy board shows, of one where there are many alike.
 *  @param like what is normal in the reading it is like */
export function readNormal(
  raw: RawTable,
  path: Path,
  reading: Pick<Reading, 'id' | 'measure'>,
  like: Reading['normal'] | null,
  context: FactsContext,
): Reading['normal'] {
  if (raw.normal === 'any') return 'any';
  const bands = bandsOf(reading);
  const isKnown = !context.unsure.has(reading.id);
  const fallback = bands.includes('good') ? ['good'] : bands.slice(0, 1);
  if (!('normal' in raw)) {
    if (like === 'any' && !('expect' in raw)) return 'any';
    const kept = like === null || like === 'any' ? [] : like.filter((band) => bands.includes(band));
    if (kept.length > 0) return kept;
    if (isKnown && !('expect' in raw)) {
      context.atKey(path, { code: 'normal-missing', reading: reading.id, bands });
    }
    return fallback;
  }
  const place = [...path, 'normal'];
  const normal = oneOrMore(raw.normal).filter((band, index) =>
    checkBand(reading, band, Array.isArray(raw.normal) ? [...place, index] : place, 'value', context),
  );
  if (isKnown && normal.length > 0 && bands.includes('good') && !normal.includes('good')) {
    context.atValue(place, { code: 'good-not-normal', reading: reading.id });
  }
  return normal.length > 0 ? normal : fallback;
}
