import type { Lack, Session } from '../../engine/run/index.ts';
import { observationText } from '../../engine/scale/index.ts';
import { bandWords } from './band-words.ts';

/** What must have been seen, and what is known of it. */
export function lackWords(
  session: Session,
  { need, reading, known }: Lack,
): { readonly wanted: string; readonly now: string } {
  const wanted = bandWords(reading, need.bands);
  if (known === null || known.bands.length === 0) return { wanted, now: 'not read yet' };
  const band = bandWords(reading, known.bands);
  const value = known.observation === null ? band : observationText(known.observation);
  const was = value === band ? band : `${value}, ${band}`;
  if (known.stale) return { wanted, now: `was ${was} when the board was set otherwise` };
  const before = known.remedies < session.position.remedies.length;
  return { wanted, now: before ? `was ${was} before the repair` : `is ${was}` };
}
