import type { BoardState } from '../../model/entry.ts';
import { bandsOf } from '../../scale/index.ts';
import { observationAt } from '../observation-at.ts';
import { readingsNeededIn } from '../readings-needed-in.ts';
import { readingsOf } from '../readings-of.ts';
import { rejudge } from '../rejudge.ts';
import { remember } from '../remember.ts';
import { latest, type Session } from '../session.ts';
import { takeReading } from '../take-reading.ts';
import type { Happening } from './happening.ts';
import { inPlace, part } from './in-place.ts';

/** The reading counts for the section it was taken in, if the walk still stands there and asks for it. What must be seen
 *  before something else may be done there is remembered only. */
function take(
  session: Session,
  index: number,
  section: string,
  reading: string,
  bands: readonly string[],
): Session {
  if (!inPlace(session, section)) return part(session, index);
  if (readingsOf(session).includes(reading)) return takeReading(session, reading, bands);
  const here = session.position.section;
  return here !== null && readingsNeededIn(session, here).has(reading) ? session : part(session, index);
}

export const read: Happening<'read'> = (session, { section, observation, board, at }, index) => {
  const { reading, bands } = observation;
  const found = session.loaded.readings.get(reading);
  const known = found === undefined ? [] : bandsOf(found);
  if (!bands.every((band) => known.includes(band))) return part(session, index);
  const next = remember(session, index, { reading, bands, observation, board, at });
  return take(withBoard(next, board), index, section, reading, bands);
};

/** A board that ran fails again as soon as something is read so. */
const withBoard = (session: Session, board: BoardState): Session =>
  board === 'failing' ? { ...session, boardState: board } : session;

export const confirmed: Happening<'confirmed'> = (session, { section, reading, of, at }, index) => {
  const before = observationAt(session.effective, of);
  const board = latest(session, reading)?.board ?? 'failing';
  if (before === null) {
    const given = session.loaded.tree.given.find((one) => one.reading === reading);
    if (given === undefined) return part(session, index);
    const word = { reading, bands: [given.band], observation: null, board, at, given: true };
    return take(remember(session, index, word), index, section, reading, word.bands);
  }
  const observation = rejudge(session, before);
  if (observation === null) return part(session, index);
  const word = { reading, bands: observation.bands, observation, board, at };
  return take(remember(session, index, word), index, section, reading, word.bands);
};

/** Not being able to read is no evidence; what was known before stays known. */
export const unread: Happening<'unread'> = (session, { section, reading, at }, index) => {
  const word = { reading, bands: [], observation: null, board: 'failing', at } as const;
  const next = latest(session, reading) === null ? remember(session, index, word) : session;
  return take(next, index, section, reading, []);
};
