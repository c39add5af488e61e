import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Entry } from '../model/entry.ts';
import { correctedEntries } from './corrected-entries.ts';
import { happen } from './happen.ts';
import { newerTrees } from './newer-trees.ts';
import { refold } from './refold.ts';
import { openSession, type Parts, type Session } from './session.ts';

/** The session after one more entry. Never throws: an entry that does not fit the walk is kept and
 *  listed in `misfits`. */
export function apply(session: Session, entry: Entry): Session {
  const next = walkedAnew(session, entry) ?? happen(session, entry, session.entries.length);
  return {
    ...next,
    parted: false,
    entries: [...session.entries, entry],
    effective: [...next.effective, entry],
  };
}

/** A correction, and a newer version of the tree, have everything walked once more; null for any other entry. */
function walkedAnew(session: Session, entry: Entry): Session | null {
  const corrected = correctedEntries(session.effective, entry);
  if (corrected !== null) return refold(session, corrected);
  const newer = newerTrees(session, entry);
  return newer && refold({ ...session, newer }, session.effective);
}

/** The session that a job's entries lead to.
 *  @param tree the one that the job began with */
export function replay(tree: CompiledTree, entries: readonly Entry[], parts?: Parts): Session {
  return entries.reduce(apply, openSession(tree, parts));
}
