import type { BoardState } from '../../model/entry.ts';
import { rejudge } from '../rejudge.ts';
import { latest, type Session } from '../session.ts';
import type { Happening } from './happening.ts';
import { inPlace, part } from './in-place.ts';

/** Earlier entries keep the doubt that they were taken with. */
export const equipped: Happening<'equipped'> = (session, { equipment }) => ({ ...session, equipment });

/** The known-good board is knowledge, no change: every word on this reading is judged anew, and a check that waited for it
 *  goes on. */
export const twin: Happening<'twin'> = (session, { observation }) => {
  const { reading, understood, doubt } = observation;
  if (understood.kind !== 'quantity') return session;
  const from = 'this job' as const;
  const value = understood.quantity;
  const found = doubt === null ? { value, from } : { value, from, plusMinus: doubt.plusMinus };
  return judgedAnew({ ...session, twins: new Map(session.twins).set(reading, found) }, reading);
};

function judgedAnew(session: Session, reading: string): Session {
  const words = (session.history.get(reading) ?? []).map((word) => {
    const observation = word.observation === null ? null : rejudge(session, word.observation);
    return observation === null ? word : { ...word, observation, bands: observation.bands };
  });
  if (words.length === 0) return session;
  const next = { ...session, history: new Map(session.history).set(reading, words) };
  const before = session.position.taken.get(reading) ?? [];
  const known = latest(next, reading);
  if (before.length === 0 || known === null) return next;
  const taken = new Map(session.position.taken).set(reading, known.bands);
  return { ...next, position: { ...session.position, taken } };
}

/** The board was brought into other conditions; a step back leads to the conditions before. */
export const arranged: Happening<'arranged'> = (session, { conditions }) => ({
  ...session,
  position: { ...session.position, conditions: { ...session.position.conditions, ...conditions } },
});

/** Holds for this visit of the section. */
export const overrode: Happening<'overrode'> = (session, { section, reading }, index) => {
  if (!inPlace(session, section)) return part(session, index);
  const overridden = new Set([...session.position.overridden, reading ?? '']);
  return { ...session, position: { ...session.position, overridden } };
};

/** Later readings are of a running board, until one of them is not. */
export const runs: Happening<'runs'> = (session, { undone }) => {
  const boardState: BoardState = undone === 'fails again' ? 'failing' : 'running';
  return { ...session, boardState };
};
