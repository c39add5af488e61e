import type { Known } from './known.ts';
import { latest, type Session } from './session.ts';

/** The latest word on a reading, if it is of the board as it is: neither stale nor from before the last remedy. */
export function knownNow(session: Session, reading: string): Known | null {
  const known = latest(session, reading);
  return known !== null && !known.stale && known.remedies === session.position.remedies.length ? known : null;
}
