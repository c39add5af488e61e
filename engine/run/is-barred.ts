import { lackingFor } from './lacking-for.ts';
import { latest, type Session } from './session.ts';

/** Whether a reading of a proof cannot be taken because what must be seen before it was seen since the remedy, and is wrong: the
 *  proof has failed there, and does not wait for it. */
export function isBarred(session: Session, id: string): boolean {
  const { section, overridden, remedies } = session.position;
  const reading = session.loaded.readings.get(id);
  if (section?.kind !== 'fault' || reading === undefined || overridden.has(id)) return false;
  return lackingFor(session, reading.onlyIf).some(({ need }) => {
    const known = latest(session, need.reading);
    return (
      known !== null &&
      known.remedies === remedies.length &&
      !known.stale &&
      known.bands.length > 0 &&
      !known.bands.some((band) => need.bands.includes(band))
    );
  });
}
