import { move } from '../move.ts';
import { startPosition, stepBack } from '../position.ts';
import type { Happening } from './happening.ts';

/** Moves the position only; what was read stays known. */
export const back: Happening<'back'> = (session) => {
  const position = stepBack(session.position);
  return session.parted || position === null ? session : { ...session, loaded: position.loaded, position };
};

export const went: Happening<'went'> = (session, { section }) =>
  session.parted || !session.loaded.sections.has(section)
    ? session
    : move(session, { type: 'go', section }, 'on purpose');

export const closed: Happening<'closed'> = (session, { mended }) => ({ ...session, closed: { mended } });

/** A board that was mended once starts at the top again. */
export const reopened: Happening<'reopened'> = (session) => {
  const { position, loaded } = session;
  const start = position.section === null ? startPosition(loaded, position) : position;
  return { ...session, closed: null, position: { ...start, headAcknowledged: -1 } };
};
