import type { Reading } from '../../engine/model/reading.ts';

/** The bands of a reading as they are read out, joined by "or". Those of many alike are put into words: `one-stuck` → `one
 *  stuck`, `low+stuck` → `low and stuck`. */
export const bandWords = (reading: Reading | undefined, bands: readonly string[]): string =>
  bandsInWords(reading, bands).join(' or ');

/** The same, one by one. */
export function bandsInWords(reading: Reading | undefined, bands: readonly string[]): readonly string[] {
  if (reading?.call) return bands.map((end) => end.replaceAll('-', ' '));
  if (reading?.measure.kind !== 'each') return bands;
  return bands.map((band) => band.replaceAll('+', ' and ').replace(/^(one|several|all)-/, '$1 '));
}
