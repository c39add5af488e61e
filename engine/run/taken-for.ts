import type { Reading } from '../model/reading.ts';
import { inputsOf } from '../scale/index.ts';
import { isComputed } from './is-computed.ts';
import type { Session } from './session.ts';

/** What is read to know a reading: itself, or what it is computed from. The end of a call cannot be read. */
export function takenFor(
  { loaded }: Pick<Session, 'loaded'>,
  reading: Reading,
  above: readonly string[] = [],
): readonly Reading[] {
  if (!isComputed(reading)) return [reading];
  return inputsOf(reading).flatMap((id) => {
    const input = loaded.readings.get(id);
    return input === undefined || above.includes(id) ? [] : takenFor({ loaded }, input, [...above, id]);
  });
}
