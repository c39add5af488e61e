import { namesIn } from '../formula/index.ts';
import type { Reading } from '../model/reading.ts';

/** The readings that a derived reading is computed from, by id; none for a reading that is taken. */
export function inputsOf(
  { id, from }: Reading,
  { readings }: { readonly readings: readonly Reading[] },
): readonly string[] {
  if (from === null) return [];
  const names = new Set(namesIn(from));
  return readings
    .filter((reading) => reading.id !== id && names.has(reading.id))
    .map((reading) => reading.id);
}
