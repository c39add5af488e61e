import type { MachineEvent } from '../model/machine.ts';
import { type Position, remedyNumber, send } from './position.ts';
import type { Session } from './session.ts';

/** The machine takes `event`; one step back undoes it. A fault that was already remedied or put
 *  aside is not entered again, unless somebody goes there on purpose. */
export function move(
  session: Session,
  event: MachineEvent,
  why: 'by the tree' | 'on purpose' = 'by the tree',
): Session {
  const { position } = session;
  const moved = send(position, event);
  const settled = why === 'on purpose' ? moved : passTriedFaults(moved);
  return { ...session, position: { ...settled, previous: position } };
}

/** On past a fault that was already remedied or put aside, where its remedy would come next. */
export function passTriedFaults(position: Position): Position {
  const { section, phase } = position;
  if (section?.kind !== 'fault' || !phase?.startsWith('remedy')) return position;
  const fault = section.remedies[remedyNumber(phase)]?.fault ?? '';
  const tried = position.declined.includes(fault) || position.remedies.some((done) => done.fault === fault);
  return tried ? passTriedFaults(send(position, { type: 'failed' })) : position;
}
