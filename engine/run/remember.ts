import type { BoardState } from '../model/entry.ts';
import type { Observation } from '../model/observation.ts';
import { bandsOf } from '../scale/index.ts';
import type { Known } from './known.ts';
import type { Session } from './session.ts';

interface Word {
  readonly reading: string;
  readonly bands: readonly string[];
  readonly observation: Observation | null;
  readonly board: BoardState;
  readonly at: string;
  readonly given?: boolean;
  /** Remedies done before; those of the present position if not given. */
  readonly remedies?: number;
}

/** Adds one word on a reading to what is known. */
export function remember(session: Session, entry: number, word: Word): Session {
  const reading = session.loaded.readings.get(word.reading);
  const known: Known = {
    ...word,
    entry,
    cut: reading === undefined ? [] : bandsOf(reading),
    remedies: word.remedies ?? session.position.remedies.length,
    stale: false,
    given: word.given ?? false,
  };
  const history = new Map(session.history);
  history.set(word.reading, [...(history.get(word.reading) ?? []), known]);
  return { ...session, history };
}
