import type { Entry } from '../../engine/model/entry.ts';
import type { Observation } from '../../engine/model/observation.ts';
import { type DoneRemedy, nameHere, type Session } from '../../engine/run/index.ts';
import { observationText } from '../../engine/scale/index.ts';

const effectWords: Record<DoneRemedy['effect'], string> = {
  'waits for proof': 'Repaired, not proven yet',
  mended: 'Mended and proven',
  'more is wrong': 'Mended, but more is wrong',
  'no effect': 'Repaired without effect',
};

/** The last thing that was found out or done, in one sentence; null before the first. */
export function lastFinding(session: Session): string | null {
  const mended = session.closed?.mended ? session.position.remedies.at(-1) : undefined;
  if (mended !== undefined) return repairWords(session, mended.fault);
  for (const entry of [...session.entries].reverse()) {
    const finding = findingOf(session, entry);
    if (finding !== null) return finding;
  }
  return null;
}

function findingOf(session: Session, entry: Entry): string | null {
  const { faults } = session.loaded;
  switch (entry.kind) {
    case 'read':
    case 'retaken':
      return `${nameHere(session, entry.observation.reading)}: ${valueAndBand(entry.observation)}`;
    case 'unread':
      return `${nameHere(session, entry.reading)} could not be read`;
    case 'remedied':
      return repairWords(session, entry.fault);
    case 'declined':
      return `Put aside: ${faults.get(entry.fault)?.is ?? entry.fault}`;
    default:
      return null;
  }
}

/** `25.2 MHz, slow`; a word that is the band itself only once. */
function valueAndBand(observation: Observation): string {
  const [value, band] = [observationText(observation), observation.bands.join(' or ')];
  return value === band ? value : `${value}, ${band}`;
}

function repairWords(session: Session, fault: string): string {
  const done = session.position.remedies.findLast((remedy) => remedy.fault === fault);
  return `${effectWords[done?.effect ?? 'waits for proof']}: ${session.loaded.faults.get(fault)?.is ?? fault}`;
}
