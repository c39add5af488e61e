import { move, passTriedFaults } from '../move.ts';
import type { Position } from '../position.ts';
import { latest, type Session } from '../session.ts';
import type { Happening } from './happening.ts';
import { part } from './in-place.ts';

/** Goes there as `go` does, and keeps the visit that is left. A detour from a detour leads back to where the first was begun. */
export const detoured: Happening<'detoured'> = (session, { section, reading }, index) => {
  if (session.parted || session.closed !== null) return session;
  const { position } = session;
  if (!session.loaded.sections.has(section) || position.section === null) return part(session, index);
  const { left = position, entry = index } = position.detour ?? {};
  const moved = move(session, { type: 'go', section }, 'on purpose');
  const detour = { section: left.section?.id ?? '', entry, reading, left };
  return { ...moved, position: { ...moved.position, detour } };
};

/** The visit goes on in which the walk was left: what was taken, acknowledged and overridden there still is. The board stays
 *  as it is now. */
export const returned: Happening<'returned'> = (session, _entry, index) => {
  if (session.parted || session.closed !== null) return session;
  const { position } = session;
  if (position.detour === null || position.section === null) return part(session, index);
  const { left, entry } = position.detour;
  const now: Position = {
    ...position,
    snapshot: left.snapshot,
    section: left.section,
    phase: left.phase,
    taken: stillTaken(session, left, entry),
    acknowledged: left.acknowledged,
    overridden: left.overridden,
    waitingSince: left.waitingSince,
    passed: false,
    detour: null,
    previous: position,
  };
  return { ...session, position: { ...passTriedFaults(now), previous: position } };
};

/** The readings of a visit that still hold: none once the board was mended, and none that went stale. A word said since the entry
 *  that left it counts instead. */
function stillTaken(session: Session, left: Position, entry: number): Position['taken'] {
  if (left.remedies.length !== session.position.remedies.length) return new Map();
  return new Map(
    [...left.taken].flatMap(([reading, bands]) => {
      const known = latest(session, reading);
      if (known === null) return bands.length === 0 ? [[reading, bands] as const] : [];
      if (known.stale) return [];
      return [[reading, known.entry > entry ? known.bands : bands] as const];
    }),
  );
}
