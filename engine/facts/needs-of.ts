import type { Path } from '../model/front-matter.ts';
import type { Need } from '../model/reading.ts';
import { bandsOf, healthyBandsOf } from '../scale/index.ts';
import { checkBand } from './check-band.ts';
import type { FactsContext } from './facts-context.ts';
import { findReading, type Readings } from './find-reading.ts';
import { isTable, oneOrMore, textsOf } from './raw.ts';

/** What `needs` and `only if` can name. */
export interface Nameable {
  readonly readings: Readings;
  /** Readings among them that stand for what a caller gives: nothing is known of them but their bands. */
  readonly parameters: ReadonlySet<string>;
}

/** `[v5]`: normal; `{ select: [pulses, weak] }`: in one of these bands. */
export function needsOf(raw: unknown, path: Path, names: Nameable, context: FactsContext): readonly Need[] {
  if (isTable(raw)) return neededBands(raw, path, names.readings, context);
  return textsOf(raw).flatMap((name, index) => {
    const place = [...path, index];
    const reading = findReading(name, names.readings, place, 'value', context);
    if (reading === null) return [];
    if (names.parameters.has(name)) {
      context.atValue(place, { code: 'parameter-bands', parameter: name, bands: bandsOf(reading) });
    }
    return [{ reading: name, bands: healthyBandsOf(reading) }];
  });
}

function neededBands(
  raw: Readonly<Record<string, unknown>>,
  path: Path,
  readings: Readings,
  context: FactsContext,
): readonly Need[] {
  return context.keysOf(path, raw).flatMap((name) => {
    const place = [...path, name];
    const reading = findReading(name, readings, place, 'key', context);
    if (reading === null) return [];
    const bands = oneOrMore(raw[name]).filter((band, index) => {
      const at = Array.isArray(raw[name]) ? [...place, index] : place;
      return checkBand(reading, band, at, 'value', context);
    });
    return bands.length === 0 ? [] : [{ reading: name, bands }];
  });
}
