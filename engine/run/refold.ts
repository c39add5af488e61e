import type { Entry } from '../model/entry.ts';
import { happen } from './happen.ts';
import { rejudge } from './rejudge.ts';
import { emptySession, type Session } from './session.ts';

/** The session that `effective` leads to: every reading judged by the settings as they count now,
 *  later entries walked while they fit. Corrections among them are already in place: each only ends
 *  the stretch that may have parted before it. */
export function refold(session: Session, effective: readonly Entry[]): Session {
  return effective.reduce<Session>((next, entry, index) => {
    const settled = settle(next, entry);
    const after = isCorrection(settled) ? { ...next, parted: false } : happen(next, settled, index);
    const entries = [...after.effective, settled];
    return { ...after, entries, effective: entries };
  }, emptySession(session.loaded));
}

const isCorrection = (entry: Entry): boolean =>
  entry.kind === 'corrected' || (entry.kind === 'retaken' && entry.manner === 'correction');

const settle = (session: Session, entry: Entry): Entry =>
  entry.kind === 'read' || (entry.kind === 'retaken' && entry.manner === 'again')
    ? { ...entry, observation: rejudge(session, entry.observation) }
    : entry;
