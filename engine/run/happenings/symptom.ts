import { remember } from '../remember.ts';
import type { Session } from '../session.ts';
import type { Happening } from './happening.ts';

/** A confirmed symptom is evidence like any reading. */
export const symptom: Happening<'symptom'> = (session, { same, at }, index) => {
  const asked = { ...session, position: { ...session.position, symptom: same } };
  if (!same) return asked;
  return session.loaded.tree.given.reduce<Session>(
    (next, { reading, band }) =>
      remember(next, index, { reading, bands: [band], observation: null, board: 'failing', at, given: true }),
    asked,
  );
};
