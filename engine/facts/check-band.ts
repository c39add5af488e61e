import type { Path } from '../model/front-matter.ts';
import type { Reading } from '../model/reading.ts';
import { nearest } from '../names/nearest.ts';
import { bandsOf } from '../scale/index.ts';
import type { FactsContext } from './facts-context.ts';

/** Whether a reading has the band, or may have it; told if not. */
export function checkBand(
  reading: Pick<Reading, 'id' | 'measure'>,
  band: string,
  path: Path,
  part: 'key' | 'value',
  context: FactsContext,
): boolean {
  const bands = bandsOf(reading);
  if (bands.includes(band) || context.unsure.has(reading.id)) return true;
  const near = nearest(band.slice(0, 60), bands);
  context.at(context.spanOf(path, part), { code: 'no-band-named', name: reading.id, band, bands, near });
  return false;
}
