import { printInstrument } from '../doubt/index.ts';
import type { JobRecord } from '../model/record.ts';
import type { Session } from '../run/index.ts';
import { observationText } from '../scale/index.ts';
import { readingOfJob, titleOfJob } from './record-trees.ts';

/** What the technician said is at the bench, as it stands. */
export function benchOf({ entries, equipment }: Session): JobRecord['bench'] {
  if (!entries.some(({ kind }) => kind === 'equipped')) return null;
  const { instruments, lacking, rule } = equipment;
  return { instruments: instruments.map(printInstrument), lacking, rule };
}

export const overridesOf = (session: Session): JobRecord['overrides'] =>
  session.entries.flatMap((entry) => {
    if (entry.kind !== 'overrode') return [];
    const what =
      entry.reading === null
        ? titleOfJob(session, entry.section)
        : (readingOfJob(session, entry.reading)?.is ?? entry.reading);
    return [{ at: entry.at, what, why: entry.why }];
  });

const undone = {
  'not tried': '',
  'fails again': '; with that undone it fails again',
  'still runs': '; with that undone it still runs',
} as const;

/** What happened to the board besides readings and remedies. */
export const eventsOf = (session: Session): JobRecord['events'] =>
  session.entries.flatMap((entry) => {
    const text = eventText(session, entry);
    return text === null ? [] : [{ at: entry.at, text }];
  });

function eventText(session: Session, entry: Session['entries'][number]): string | null {
  switch (entry.kind) {
    case 'arranged':
      return Object.entries(entry.conditions)
        .map(([condition, value]) => `${condition} ${value}`)
        .join(', ');
    case 'altered':
      return `${session.loaded.settings.get(entry.setting)?.is ?? entry.setting}: changed to ${entry.typed}`;
    case 'runs':
      return `It runs. Touched last: ${entry.touched}${undone[entry.undone]}`;
    case 'detoured': {
      const is = readingOfJob(session, entry.reading)?.is ?? entry.reading;
      return `Detour to "${titleOfJob(session, entry.section)}": ${is}`;
    }
    case 'returned':
      return 'Back from the detour';
    case 'twin': {
      const { reading } = entry.observation;
      return `Known-good board, ${readingOfJob(session, reading)?.is ?? reading}: ${observationText(entry.observation)}`;
    }
    default:
      return null;
  }
}
