import { namesIn } from '../formula/index.ts';
import type { Reading } from '../model/reading.ts';

const known = new WeakMap<Reading, readonly string[]>();

/** The settings that a reading is judged by. */
export function settingsOf(reading: Reading): readonly string[] {
  const before = known.get(reading);
  if (before) return before;
  const { measure } = reading;
  const names = measure.kind === 'quantity' ? [...new Set(measure.scale.limits.flatMap(namesIn))] : [];
  known.set(reading, names);
  return names;
}
