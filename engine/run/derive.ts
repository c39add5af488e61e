import type { Entry } from '../model/entry.ts';
import type { Reading } from '../model/reading.ts';
import { inputsOf } from '../scale/index.ts';
import { derivedNow } from './derived-now.ts';
import type { Known } from './known.ts';
import { remember } from './remember.ts';
import { latest, type Session } from './session.ts';

/** Computes what follows from the readings and settings as `entry` left them. What comes out otherwise than before is one
 *  more word on the derived reading. */
export function derive(before: Session, after: Session, entry: Entry, index: number): Session {
  if (before.history === after.history && !isJudgedAnew(before, after)) return after;
  return after.loaded.derived.reduce(
    (session, reading) =>
      isJudgedAnew(before, after) || hasNews(before, session, reading)
        ? deriveOne(session, reading, entry, index)
        : session,
    after,
  );
}

const isJudgedAnew = (before: Session, after: Session): boolean =>
  before.settings !== after.settings ||
  before.twins !== after.twins ||
  before.loaded !== after.loaded ||
  before.equipment !== after.equipment;

/** Whether there is another word on anything that it is computed from, or on itself. */
const hasNews = (before: Session, after: Session, reading: Reading): boolean =>
  [reading.id, ...inputsOf(reading)].some((id) => before.history.get(id) !== after.history.get(id));

function deriveOne(session: Session, reading: Reading, { at }: Entry, index: number): Session {
  const known = latest(session, reading.id);
  const { observation, from, unknown } = derivedNow(session, reading);
  const running = from.length > 0 && from.every(({ board }) => board === 'running');
  const word = {
    reading: reading.id,
    bands: unknown ? [] : observation.bands,
    observation: unknown ? null : observation,
    board: running ? 'running' : 'failing',
    at,
    remedies: from[0]?.remedies ?? session.position.remedies.length,
  } as const;
  return isNews(known, word) ? remember(session, index, word) : session;
}

type Word = Pick<Known, 'bands' | 'observation' | 'remedies' | 'board'>;

/** Not being known is no news of a reading that was not known before. */
function isNews(known: Known | null, word: Word): boolean {
  if (known === null || known.bands.length === 0) return word.bands.length > 0;
  return known.stale || textOf(known) !== textOf(word);
}

const textOf = ({ bands, observation, remedies, board }: Word): string =>
  JSON.stringify([bands, observation?.understood, remedies, board]);
