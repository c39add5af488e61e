import { isComputed } from './is-computed.ts';
import { proofReadings } from './proof-readings.ts';
import type { Session } from './session.ts';

/** Everything that the present section rests on, what is computed included. */
export function restsOn(session: Session): readonly string[] {
  const { section, phase } = session.position;
  if (section?.kind === 'check') return section.readings;
  return section?.kind === 'fault' && phase?.startsWith('proof') ? proofReadings(session, section) : [];
}

/** The readings that the present section asks for. */
export const readingsOf = (session: Session): readonly string[] =>
  restsOn(session).filter((id) => {
    const reading = session.loaded.readings.get(id);
    return reading !== undefined && !isComputed(reading);
  });
