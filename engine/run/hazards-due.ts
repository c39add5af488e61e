import type { Hazard, SignalWord } from '../model/prose.ts';
import type { Section } from '../model/section.ts';
import { remedyNumber } from './position.ts';
import type { Session } from './session.ts';

const grave: readonly SignalWord[] = ['danger', 'warning'];

/** Hazards that must be acknowledged before anything else, and the digest of their words. */
export interface HazardsDue {
  readonly section: Section | null;
  readonly hazards: readonly Hazard[];
  readonly words: string;
}

/** What has to be acknowledged now, or null. The heading's hazards are acknowledged once per sitting,
 *  a section's once per visit and sitting. */
export function hazardsDue(session: Session): HazardsDue | null {
  const { section, acknowledged, headAcknowledged } = session.position;
  if (headAcknowledged <= session.resumedAt) {
    const due = dueOf(null, session.loaded.tree.hazards);
    if (due !== null) return due;
  }
  if (section === null) return null;
  const due = dueOf(section, hazardsHere(session));
  if (due === null) return null;
  return (acknowledged.get(due.words) ?? -1) > session.resumedAt ? null : due;
}

/** The hazards of the present section, with those of the remedy at hand. */
export function hazardsHere(session: Session): readonly Hazard[] {
  const { section, phase } = session.position;
  if (section?.kind !== 'fault' || !phase?.startsWith('remedy')) return section?.hazards ?? [];
  return [...section.hazards, ...(section.remedies[remedyNumber(phase)]?.hazards ?? [])];
}

function dueOf(section: Section | null, hazards: readonly Hazard[]): HazardsDue | null {
  const due = hazards.filter(({ word }) => grave.includes(word));
  return due.length === 0
    ? null
    : { section, hazards: due, words: due.map(({ digest }) => digest).join('+') };
}
