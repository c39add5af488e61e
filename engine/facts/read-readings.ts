import type { Path } from '../model/front-matter.ts';
import type { Reading } from '../model/reading.ts';
import { bandsOf } from '../scale/index.ts';
import { checkBand } from './check-band.ts';
import { checkName } from './check-name.ts';
import type { FactsContext } from './facts-context.ts';
import { isTable, numberOf, oneOrMore, type RawTable, tableOf, textOf, textsOf } from './raw.ts';
import { readMeasure } from './read-measure.ts';
import { readMinutes } from './read-minutes.ts';
import type { ReadSettings } from './read-settings.ts';

/** The readings with everything that concerns each alone: what they need of each other is read by `readNeeds`. */
export function readReadings(
  data: RawTable,
  minutes: number,
  settings: ReadSettings,
  context: FactsContext,
): readonly Reading[] {
  const table = tableOf(data.readings);
  return context.keysOf(['readings'], table).flatMap((id): readonly Reading[] => {
    const raw = table[id];
    const path = ['readings', id];
    checkName(id, 'reading', path, 'key', context);
    const same = settings.settings.find((setting) => setting.id === id);
    if (same !== undefined) {
      const related = context.spanOf(['settings', id], 'key');
      context.atKey(path, { code: 'setting-and-reading', name: id }, { related });
    }
    return isTable(raw) ? [readReading(id, raw, path, minutes, settings, context)] : [];
  });
}

function readReading(
  id: string,
  raw: RawTable,
  path: Path,
  minutes: number,
  settings: ReadSettings,
  context: FactsContext,
): Reading {
  const before = context.diagnostics.length;
  const measure = readMeasure(raw, path, settings, context);
  if (context.diagnostics.length > before) context.unsure.add(id);
  const reading: Reading = {
    id,
    is: textOf(raw.is) ?? id,
    measure,
    call: false,
    from: null,
    like: null,
    when: {},
    onlyIf: [],
    usual: null,
    normal: 'any',
    needs: [],
    hidden: null,
    after: [],
    power: raw.power === 'on' || raw.power === 'off' ? raw.power : null,
    with: oneOrMore(raw.with),
    set: textOf(raw.set),
    points: textsOf(raw.points),
    minutes: numberOf(raw.minutes) ?? minutes,
    wait: readMinutes(raw.wait),
    source: textOf(raw.source),
  };
  if (raw.normal === 'any') return reading;
  if (!('source' in raw)) context.atKey(path, { code: 'missing-source', reading: id });
  return { ...reading, normal: readNormal(raw, path, reading, context) };
}

function readNormal(raw: RawTable, path: Path, reading: Reading, context: FactsContext): readonly string[] {
  const bands = bandsOf(reading);
  const place = [...path, 'normal'];
  const normal = oneOrMore(raw.normal).filter((band, index) =>
    checkBand(reading, band, Array.isArray(raw.normal) ? [...place, index] : place, 'value', context),
  );
  const fallback = bands.includes('good') ? ['good'] : bands.slice(0, 1);
  const isKnown = !context.unsure.has(reading.id);
  if (!('normal' in raw)) {
    if (isKnown && !('expect' in raw))
      context.atKey(path, { code: 'normal-missing', reading: reading.id, bands });
    return fallback;
  }
  if (isKnown && normal.length > 0 && bands.includes('good') && !normal.includes('good')) {
    context.atValue(place, { code: 'good-not-normal', reading: reading.id });
  }
  return normal.length > 0 ? normal : fallback;
}
