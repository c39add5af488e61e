import type { Given } from '../model/compiled-tree.ts';
import { checkBand } from './check-band.ts';
import type { FactsContext } from './facts-context.ts';
import { findReading, type Readings } from './find-reading.ts';
import { type RawTable, tableOf, textOf } from './raw.ts';

/** The bands that belong to the symptom. */
export function readGiven(data: RawTable, readings: Readings, context: FactsContext): readonly Given[] {
  const table = tableOf(data.given);
  return context.keysOf(['given'], table).flatMap((name): readonly Given[] => {
    const place = ['given', name];
    const reading = findReading(name, readings, place, 'key', context);
    const band = textOf(table[name]);
    if (reading === null || band === null) return [];
    return checkBand(reading, band, place, 'value', context) ? [{ reading: name, band }] : [];
  });
}
