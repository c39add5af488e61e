import type { Entry } from '../../engine/model/entry.ts';
import type { Session } from '../../engine/run/index.ts';

/** The reading that an entry is about, or null. */
export function readingOfEntry(entry: Entry): string | null {
  switch (entry.kind) {
    case 'read':
    case 'retaken':
      return entry.observation.reading;
    case 'confirmed':
    case 'unread':
      return entry.reading;
    default:
      return null;
  }
}

/** Index of the last entry about a reading, also where it could not be read; -1 if there is none. */
export function lastLook(session: Session, reading: string): number {
  return session.entries.findLastIndex((entry) => readingOfEntry(entry) === reading);
}
