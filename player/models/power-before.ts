import type { Session } from '../../engine/run/index.ts';
import { readingOfEntry } from './last-look.ts';

/** How the power stood for the last reading that asked for a state; null before the first. */
export function powerBefore(session: Session): 'on' | 'off' | null {
  for (const entry of [...session.entries].reverse()) {
    const power = session.loaded.readings.get(readingOfEntry(entry) ?? '')?.power ?? null;
    if (power !== null) return power;
  }
  return null;
}
