import { finishProof } from './finish-proof.ts';
import { move } from './move.ts';
import { proofReadings } from './proof-readings.ts';
import { resolveCheck } from './resolve-check.ts';
import type { Session } from './session.ts';

/** Notes that `reading` was taken on this visit; when it was the last one, the section is finished. */
export function takeReading(session: Session, reading: string, bands: readonly string[]): Session {
  const { position } = session;
  const taken = new Map(position.taken).set(reading, bands);
  const next = { ...session, position: { ...position, taken, previous: position } };
  const all = readingsOf(next);
  if (!all.every((id) => taken.has(id))) return next;
  const done = position.section?.kind === 'check' ? finishCheck(next) : finishProof(next, all);
  return done === next ? next : { ...done, position: { ...done.position, previous: position } };
}

/** The readings that the present section asks for. */
export function readingsOf(session: Session): readonly string[] {
  const { section } = session.position;
  if (section?.kind === 'check') return section.readings;
  return section?.kind === 'fault' ? proofReadings(session, section) : [];
}

function finishCheck(session: Session): Session {
  const way = resolveCheck(session);
  if (way.kind === 'open') return session;
  return move(session, way.event);
}
