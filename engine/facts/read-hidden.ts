import type { Path } from '../model/front-matter.ts';
import type { Measure, Reading } from '../model/reading.ts';
import type { Setting } from '../model/setting.ts';
import { allNormal, bandsOf, memberReading } from '../scale/index.ts';
import { checkBand } from './check-band.ts';
import type { FactsContext } from './facts-context.ts';
import { hiddenBand } from './hidden-band.ts';
import { type RawTable, textOf } from './raw.ts';

/** What a reading shows while something it needs is missing. Of many alike it is said of one, and then all show it. */
export function readHidden(
  raw: RawTable,
  path: Path,
  reading: Reading,
  like: Reading | null,
  settings: readonly Setting[],
  context: FactsContext,
): string | null {
  const one = memberReading(reading);
  const written = textOf(raw.hidden);
  if (written !== null) {
    return checkBand(one, written, [...path, 'hidden'], 'value', context)
      ? ofWhole(written, reading.measure)
      : null;
  }
  const inherited = like?.hidden ?? null;
  if (inherited !== null && bandsOf(reading).includes(inherited)) return inherited;
  if (reading.needs.length === 0) return null;
  const hidden = hiddenBand(one, settings);
  if (hidden === null) {
    context.atKey(path, { code: 'hidden-missing', reading: reading.id, bands: bandsOf(one) });
  }
  return hidden && ofWhole(hidden, reading.measure);
}

function ofWhole(band: string, measure: Measure): string {
  if (measure.kind !== 'each') return band;
  return measure.normal.includes(band) ? allNormal : `all-${band}`;
}
