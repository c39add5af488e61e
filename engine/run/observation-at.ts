import type { Entry } from '../model/entry.ts';
import type { Observation } from '../model/observation.ts';

/** The observation that entry `of` holds or confirms, or null. */
export function observationAt(entries: readonly Entry[], of: number): Observation | null {
  const entry = entries[of];
  if (entry === undefined) return null;
  if (entry.kind === 'read' || entry.kind === 'retaken') return entry.observation;
  return entry.kind === 'confirmed' && entry.of < of ? observationAt(entries, entry.of) : null;
}
