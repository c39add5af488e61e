import { lacksTool } from '../doubt/index.ts';
import { memberReading, resolveScale } from '../scale/index.ts';
import { isBarred } from './is-barred.ts';
import type { ReadingQuestion } from './question.ts';
import { readingHere } from './reading-here.ts';
import { readingsOf } from './readings-of.ts';
import { latest, type Session } from './session.ts';

/** The reading that the present section waits for, whether it can be taken at once or not; null where all are taken. */
export function readingAsked(session: Session, id: string | null = null): ReadingQuestion | null {
  const { section, phase, taken } = session.position;
  if (section?.kind !== 'check' && (section?.kind !== 'fault' || !phase?.startsWith('proof'))) return null;
  const ids = readingsOf(session);
  const at =
    id === null ? ids.findIndex((one) => !taken.has(one) && !isBarred(session, one)) : ids.indexOf(id);
  const reading = readingHere(session, ids[at] ?? '');
  if (reading === undefined) return null;
  return {
    ask: 'reading',
    section,
    reading,
    purpose: section.kind === 'check' ? 'check' : 'proof',
    place: { at: at + 1, of: ids.length },
    known: latest(session, reading.id),
    lacks: lacksTool(reading, session.equipment),
    twinWanted: resolveScale(memberReading(reading), session).missing.includes('twin'),
    tries: section.kind === 'fault' ? (section.proofTries[reading.id] ?? null) : null,
  };
}
