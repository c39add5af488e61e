import type { Entry } from '../model/entry.ts';
import { happen } from './happen.ts';
import { rejudge } from './rejudge.ts';
import { emptySession, type Session } from './session.ts';

/** The session that corrected entries lead to: every reading judged by the settings as they count now, later
 *  entries walked while they fit. */
export function refold(session: Session, effective: readonly Entry[]): Session {
  let next = emptySession(session);
  for (const [index, entry] of effective.entries()) {
    const settled = settle(next, entry);
    next = happen(next, settled, index);
    next = { ...next, effective: [...next.effective, settled] };
  }
  return next;
}

const settle = (session: Session, entry: Entry): Entry =>
  entry.kind === 'read' || (entry.kind === 'retaken' && entry.manner === 'again')
    ? { ...entry, observation: rejudge(session, entry.observation) ?? entry.observation }
    : entry;
