import type { Entry } from '../model/entry.ts';
import type { Session } from './session.ts';

/** The versions that the job is walked with once `entry` has moved it to a newer tree; null for any other entry, and where
 *  the tree is not at hand. */
export function newerTrees({ laterTrees, newer }: Session, entry: Entry): Session['newer'] | null {
  if (entry.kind !== 'tree' || entry.why !== 'newer') return null;
  const found = laterTrees.find(({ digest }) => digest === entry.digest);
  return found === undefined ? null : new Map(newer).set(found.id, found.digest);
}
