import type { Entry } from '../model/entry.ts';
import type { Happening } from './happenings/happening.ts';
import { happenings } from './happenings/index.ts';
import type { Session } from './session.ts';

/** What `entry` does to the session, before it is written down. */
export function happen(session: Session, entry: Entry, index: number): Session {
  const row = happenings[entry.kind] as Happening<typeof entry.kind>;
  return row(session, entry as never, index);
}
