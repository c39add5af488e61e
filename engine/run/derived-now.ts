import type { Observation } from '../model/observation.ts';
import type { Reading } from '../model/reading.ts';
import { bandsOf, deriveObservation, inputsOf } from '../scale/index.ts';
import type { Known } from './known.ts';
import { latest, type Session } from './session.ts';

/** A derived reading as it comes out now. */
export interface DerivedNow {
  readonly observation: Observation;
  /** The words that it is computed from. */
  readonly from: readonly Known[];
  /** Nothing is known of it: it can be in any band. */
  readonly unknown: boolean;
}

/** Computes a derived reading from the words that count. Where inputs were taken before and after a remedy, the older ones
 *  are left out: they belong to another board.
 *  @param supposed observations that have not been entered yet, by reading */
export function derivedNow(
  session: Session,
  reading: Reading,
  supposed: Readonly<Record<string, Observation>> = {},
): DerivedNow {
  const inputs = inputsOf(reading);
  const words = inputs.flatMap((id) => {
    const word = latest(session, id);
    const wasUnreadNow = session.position.taken.get(id)?.length === 0;
    return word === null || word.stale || word.observation === null || wasUnreadNow ? [] : [word];
  });
  const isSupposed = inputs.some((id) => supposed[id] !== undefined);
  const newest = isSupposed
    ? session.position.remedies.length
    : Math.max(...words.map(({ remedies }) => remedies));
  const from = words.filter(({ remedies }) => remedies === newest);
  const observation = deriveObservation(
    reading,
    session,
    (id) => supposed[id] ?? from.find((word) => word.reading === id)?.observation ?? null,
    session.equipment.rule,
  );
  const all = bandsOf(reading);
  return { observation, from, unknown: all.length > 1 && observation.bands.length === all.length };
}
