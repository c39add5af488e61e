import type { Entry } from '../model/entry.ts';
import { endCalls } from './end-calls.ts';
import { finishProof } from './finish-proof.ts';
import { hazardsDue } from './hazards-due.ts';
import { isBarred } from './is-barred.ts';
import { move } from './move.ts';
import { openingQuestion } from './opening-question.ts';
import type { Position } from './position.ts';
import { readingsOf, restsOn } from './readings-of.ts';
import { resolveCheck } from './resolve-check.ts';
import type { Session } from './session.ts';

/**
 * Leaves every section in which nothing is waited for any more: a check or a proof whose readings are all taken, and
 * checks of which everything is computed. One step back undoes all of it.
 *
 *     before ←─ after `v5` was taken ─→ next section        back leads to `before`
 *     before ←─ all computed (passed) ←─ next section       back leads to `before`
 */
export function goOn(before: Session, after: Session, entry: Entry, index: number): Session {
  let session = after;
  const left = new Set<Position['section']>();
  while (!session.parted && session.closed === null) {
    const { position } = session;
    const asks = readingsOf(session).length > 0;
    if (left.has(position.section) || !isFinished(session, asks)) break;
    const moved = finish(session);
    if (moved === session) break;
    left.add(position.section);
    const previous = asks ? before.position : { ...position, passed: true };
    session = endCalls(session, { ...moved, position: { ...moved.position, previous } }, entry, index);
  }
  return session;
}

function isFinished(session: Session, asks: boolean): boolean {
  const { taken, section } = session.position;
  if (asks) return readingsOf(session).every((id) => taken.has(id) || isBarred(session, id));
  if (section?.kind === 'check' || restsOn(session).length > 0) {
    return openingQuestion(session) === null && hazardsDue(session) === null;
  }
  return false;
}

function finish(session: Session): Session {
  if (session.position.section?.kind === 'fault') return finishProof(session, restsOn(session));
  const way = resolveCheck(session);
  return way.kind === 'open' ? session : move(session, way.event);
}
