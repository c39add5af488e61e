import { bandsOf } from '../../scale/index.ts';
import { remember } from '../remember.ts';
import type { Session } from '../session.ts';
import type { Happening } from './happening.ts';

/** A correction has put its value in place of the old one (see `correctedEntries`); what remains is that the
 *  walk may go on from where the corrected entries lead. */
const walkedAnew = (session: Session): Session => ({ ...session, parted: false });

export const corrected: Happening<'corrected'> = walkedAnew;

/** Taken `again`, a reading gets one more word. In the check that the walk stands in, the latest word decides. */
export const retaken: Happening<'retaken'> = (session, { manner, observation, board, at }, index) => {
  const { reading, bands } = observation;
  if (manner === 'correction') return walkedAnew(session);
  const found = session.loaded.readings.get(reading);
  if (found === undefined || !bands.every((band) => bandsOf(found).includes(band))) return session;
  const next = remember(session, index, { reading, bands, observation, board, at });
  const known = board === 'failing' ? { ...next, boardState: board } : next;
  const { position } = known;
  if (!position.taken.has(reading)) return known;
  return { ...known, position: { ...position, taken: new Map(position.taken).set(reading, bands) } };
};

/** Struck out: the reading falls back on what was known before. */
export const struck: Happening<'struck'> = (session, { of }) => ({
  ...session,
  history: new Map(
    [...session.history].map(([reading, words]) => [reading, words.filter((word) => word.entry !== of)]),
  ),
});
