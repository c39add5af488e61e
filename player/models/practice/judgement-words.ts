import type { Observation } from '../../../engine/model/observation.ts';
import type { Reading } from '../../../engine/model/reading.ts';
import type { Session } from '../../../engine/run/index.ts';
import { expectedText } from '../../../engine/scale/index.ts';
import { asShown } from '../../parts/as-shown.ts';
import { bandWords } from '../band-words.ts';

/** Which band a reading is in, beside what a trainee said: `You said good. It is low: it should be 4.75 … 5.25 V`. */
export function judgementWords(
  session: Session,
  reading: Reading,
  { bands }: Pick<Observation, 'bands'>,
  said: string | null,
): string {
  const is = bandWords(reading, bands);
  const should = shouldWords(session, reading, bands);
  if (said === null) return `It is ${is}${should}`;
  const close = bands.length > 1 ? `Too close to call with this instrument: ${is}` : `It is ${is}`;
  const yours = `You said "${bandWords(reading, [said])}"`;
  if (!bands.includes(said)) return `${yours}. ${close}${should}`;
  return bands.length > 1 ? `${yours}. ${close}` : `${yours}, and so it is${should}`;
}

function shouldWords(session: Session, reading: Reading, bands: readonly string[]): string {
  if (reading.normal === 'any') return '';
  if (bands.every((band) => reading.normal.includes(band))) return ', as it should be';
  const expected = asShown(expectedText(reading, session));
  return expected === '' ? '' : `; it should be ${expected}`;
}
