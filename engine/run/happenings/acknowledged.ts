import type { Happening } from './happening.ts';
import { inPlace, part } from './in-place.ts';

export const acknowledged: Happening<'acknowledged'> = (session, { section, words }, index) => {
  if (section === null) {
    return { ...session, position: { ...session.position, headAcknowledged: index } };
  }
  if (!inPlace(session, section)) return part(session, index);
  const { position } = session;
  return {
    ...session,
    position: { ...position, acknowledged: new Map(position.acknowledged).set(words, index) },
  };
};
