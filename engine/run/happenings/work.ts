import { move } from '../move.ts';
import { remedyNumber } from '../position.ts';
import type { Happening } from './happening.ts';
import { inPlace, part } from './in-place.ts';

/** Too close to call, and the technician chose. */
export const assumed: Happening<'assumed'> = (session, { section, bands }, index) =>
  inPlace(session, section) ? move(session, { type: 'checked', bands }) : part(session, index);

export const waiting: Happening<'waiting'> = (session, { section, at }, index) =>
  inPlace(session, section)
    ? { ...session, position: { ...session.position, waitingSince: at } }
    : part(session, index);

/** A task leaves the board in the conditions that it brings about. */
export const did: Happening<'did'> = (session, { section }, index) => {
  if (!inPlace(session, section)) return part(session, index);
  const here = session.position.section;
  const moved = move(session, { type: 'done' });
  if (here?.kind !== 'task') return moved;
  const conditions = { ...moved.position.conditions, ...here.sets };
  return { ...moved, position: { ...moved.position, conditions } };
};

export const remedied: Happening<'remedied'> = (session, { section, fault }, index) => {
  const { position } = session;
  const phase = position.phase ?? '';
  const due = position.section?.kind === 'fault' && position.section.remedies[remedyNumber(phase)]?.fault;
  if (!inPlace(session, section) || !phase.startsWith('remedy') || due !== fault) return part(session, index);
  const moved = move(session, { type: 'done' });
  const done = { entry: index, section, fault, effect: 'waits for proof' } as const;
  return {
    ...moved,
    position: { ...moved.position, remedies: [...position.remedies, done] },
  };
};

export const declined: Happening<'declined'> = (session, { section, fault }, index) => {
  if (!inPlace(session, section) || !session.position.phase?.startsWith('remedy'))
    return part(session, index);
  const { position } = session;
  const aside = { ...session, position: { ...position, declined: [...position.declined, fault] } };
  const moved = move(aside, { type: 'failed' });
  return { ...moved, position: { ...moved.position, previous: position } };
};
