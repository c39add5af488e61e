import type { Need } from '../model/reading.ts';
import type { Section } from '../model/section.ts';
import type { Session } from './session.ts';
import { takenFor } from './taken-for.ts';

/** Every reading that can be asked for in a section so that something else there may be done. */
export function readingsNeededIn(session: Session, section: Section): ReadonlySet<string> {
  const { readings, faults } = session.loaded;
  const found = new Set<string>();
  const visit = ({ reading: id }: Need): void => {
    const reading = readings.get(id);
    if (reading === undefined) return;
    for (const { id: taken, onlyIf } of takenFor(session, reading)) {
      if (found.has(taken)) continue;
      found.add(taken);
      onlyIf.forEach(visit);
    }
  };
  const onlyIfOf = (ids: readonly string[]): readonly Need[] =>
    ids.flatMap((id) => readings.get(id)?.onlyIf ?? []);
  if (section.kind === 'check') onlyIfOf(section.readings).forEach(visit);
  if (section.kind === 'task') section.onlyIf.forEach(visit);
  if (section.kind === 'fault') {
    section.onlyIf.forEach(visit);
    for (const { fault } of section.remedies) faults.get(fault)?.onlyIf.forEach(visit);
    // After a remedy everything that was wrong is read again, whatever it needs.
    onlyIfOf([...readings.keys()]).forEach(visit);
  }
  return found;
}
