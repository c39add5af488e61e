import type { Path } from '../model/front-matter.ts';
import type { Need, Reading } from '../model/reading.ts';
import type { Setting } from '../model/setting.ts';
import { bandsOf } from '../scale/index.ts';
import { checkBand } from './check-band.ts';
import type { FactsContext } from './facts-context.ts';
import { findCircles } from './find-circles.ts';
import { findReading, type Readings } from './find-reading.ts';
import { hiddenBand } from './hidden-band.ts';
import { isTable, oneOrMore, type RawTable, tableOf, textOf, textsOf } from './raw.ts';

/** The readings with what they need, what is to be taken before them, and what they show while something is missing. */
export function readNeeds(
  readings: readonly Reading[],
  settings: readonly Setting[],
  data: RawTable,
  context: FactsContext,
): readonly Reading[] {
  const table = tableOf(data.readings);
  const known: Readings = new Map(readings.map((reading) => [reading.id, reading]));
  const complete = readings.map((reading) => {
    const raw = tableOf(table[reading.id]);
    const path = ['readings', reading.id];
    const needs = needsOf(raw.needs, [...path, 'needs'], known, context);
    const after = textsOf(raw.after).filter(
      (name, index) => findReading(name, known, [...path, 'after', index], 'value', context) !== null,
    );
    const hidden = readHidden(raw, path, { ...reading, needs }, settings, context);
    return { ...reading, needs, after, hidden };
  });
  circles('needs', complete, (reading) => reading.needs.map((need) => need.reading), context);
  circles('after', complete, (reading) => reading.after, context);
  return complete;
}

function needsOf(raw: unknown, path: Path, known: Readings, context: FactsContext): readonly Need[] {
  if (!isTable(raw)) {
    return textsOf(raw).flatMap((name, index) => {
      const reading = findReading(name, known, [...path, index], 'value', context);
      return reading === null ? [] : [{ reading: name, bands: normalOrAll(reading) }];
    });
  }
  return context.keysOf(path, raw).flatMap((name) => {
    const place = [...path, name];
    const reading = findReading(name, known, place, 'key', context);
    if (reading === null) return [];
    const bands = oneOrMore(raw[name]).filter((band, index) => {
      const at = Array.isArray(raw[name]) ? [...place, index] : place;
      return checkBand(reading, band, at, 'value', context);
    });
    return bands.length === 0 ? [] : [{ reading: name, bands }];
  });
}

const normalOrAll = (reading: Reading): readonly string[] =>
  reading.normal === 'any' ? bandsOf(reading) : reading.normal;

function readHidden(
  raw: RawTable,
  path: Path,
  reading: Reading,
  settings: readonly Setting[],
  context: FactsContext,
): string | null {
  const bands = bandsOf(reading);
  const written = textOf(raw.hidden);
  if (written !== null) {
    return checkBand(reading, written, [...path, 'hidden'], 'value', context) ? written : null;
  }
  if (reading.needs.length === 0) return null;
  const hidden = hiddenBand(reading, settings);
  if (hidden === null) context.atKey(path, { code: 'hidden-missing', reading: reading.id, bands });
  return hidden;
}

function circles(
  key: 'needs' | 'after',
  readings: readonly Reading[],
  next: (reading: Reading) => readonly string[],
  context: FactsContext,
): void {
  const arcs = new Map(readings.map((reading) => [reading.id, next(reading)]));
  for (const names of findCircles(arcs)) {
    context.atKey(['readings', names[0] ?? '', key], { code: 'circle', key, names });
  }
}
