import type { Question } from './question.ts';
import { latest, type Session } from './session.ts';

/** What has to be said before the first section of a tree: null where all of it has been. */
export function openingQuestion(session: Session): Question | null {
  if (!session.opened) return { ask: 'opening' };
  const { settings, given } = session.loaded.tree;
  const setting = settings.find(({ id }) => !session.settings.has(id));
  if (setting !== undefined) return { ask: 'setting', setting };
  if (session.position.symptom !== null || given.every(({ reading, band }) => isSeen(session, reading, band)))
    return null;
  return { ask: 'symptom', given };
}

/** A job that was handed over may have shown the next tree's symptom on its way. */
function isSeen(session: Session, reading: string, band: string): boolean {
  const known = latest(session, reading);
  return known !== null && !known.stale && known.bands.length === 1 && known.bands[0] === band;
}
