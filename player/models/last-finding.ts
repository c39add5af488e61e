import type { Entry } from '../../engine/model/entry.ts';
import type { Observation } from '../../engine/model/observation.ts';
import type { Session } from '../../engine/run/index.ts';
import { observationText } from '../../engine/scale/index.ts';

/** The last thing that was found out or done, in one sentence; null before the first. */
export function lastFinding(session: Session): string | null {
  for (const entry of [...session.entries].reverse()) {
    const finding = findingOf(session, entry);
    if (finding !== null) return finding;
  }
  return null;
}

function findingOf(session: Session, entry: Entry): string | null {
  const { readings, faults } = session.loaded;
  const read = (observation: Observation) =>
    `${readings.get(observation.reading)?.is ?? observation.reading}: ${observationText(observation)}, ${observation.bands.join(' or ')}`;
  switch (entry.kind) {
    case 'read':
    case 'retaken':
      return read(entry.observation);
    case 'unread':
      return `${readings.get(entry.reading)?.is ?? entry.reading} could not be read`;
    case 'remedied':
      return `Mended: ${faults.get(entry.fault)?.is ?? entry.fault}`;
    case 'declined':
      return `Put aside: ${faults.get(entry.fault)?.is ?? entry.fault}`;
    default:
      return null;
  }
}
