import type { Entry } from '../model/entry.ts';
import { happen } from './happen.ts';
import { rejudge } from './rejudge.ts';
import { emptySession, type Session } from './session.ts';

/** The session that `effective` leads to: every reading judged by the settings as they count now,
 *  later entries walked while they fit. Corrections among them are already in place: each only ends
 *  the stretch that may have parted before it. */
export function refold(session: Session, effective: readonly Entry[]): Session {
  let next = emptySession(session.loaded);
  const entries: Entry[] = [];
  for (const [index, entry] of effective.entries()) {
    const settled = settle(next, entry);
    next = isCorrection(settled) ? { ...next, parted: false } : happen(next, settled, index);
    entries.push(settled);
    next = { ...next, entries, effective: entries };
  }
  return next;
}

const isCorrection = (entry: Entry): boolean =>
  entry.kind === 'corrected' || (entry.kind === 'retaken' && entry.manner === 'correction');

const settle = (session: Session, entry: Entry): Entry =>
  entry.kind === 'read' || (entry.kind === 'retaken' && entry.manner === 'again')
    ? { ...entry, observation: rejudge(session, entry.observation) }
    : entry;
