import type { Session } from './session.ts';

/** Notes that `reading` was taken on this visit, and the bands it can be in. */
export function takeReading(session: Session, reading: string, bands: readonly string[]): Session {
  const { position } = session;
  const taken = new Map(position.taken).set(reading, bands);
  return { ...session, position: { ...position, taken, previous: position } };
}
