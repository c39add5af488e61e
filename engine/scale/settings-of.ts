import { namesIn } from '../formula/index.ts';
import type { Reading } from '../model/reading.ts';

/** The settings that a reading is judged by. */
export function settingsOf({ measure }: Reading): readonly string[] {
  return measure.kind === 'quantity' ? [...new Set(measure.scale.limits.flatMap(namesIn))] : [];
}
