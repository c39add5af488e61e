import { namesIn } from '../formula/index.ts';
import type { Reading } from '../model/reading.ts';
import { memberReading } from './member-reading.ts';
import { twinName } from './twin-of.ts';

const known = new WeakMap<Reading, readonly string[]>();

/** The names that a reading is judged by: settings, and for a derived reading also the readings that it is computed from.
 *  The known-good board is not among them. */
export function settingsOf(reading: Reading): readonly string[] {
  const before = known.get(reading);
  if (before) return before;
  const names = [...new Set([...limitNames(reading), ...inputsOf(reading)])].filter(
    (name) => name !== twinName,
  );
  known.set(reading, names);
  return names;
}

/** The readings and settings that a derived reading is computed from; none where it is taken. */
export const inputsOf = ({ from }: Reading): readonly string[] => (from === null ? [] : namesIn(from));

function limitNames(reading: Reading): readonly string[] {
  const { measure } = memberReading(reading);
  return measure.kind === 'quantity' ? measure.scale.limits.flatMap(namesIn) : [];
}

/** Whether a limit of the reading rests on what a known-good board shows. */
export const usesTwin = (reading: Reading): boolean => limitNames(reading).includes(twinName);
