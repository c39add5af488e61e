import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Entry } from '../model/entry.ts';
import { correctedEntries } from './corrected-entries.ts';
import { happen } from './happen.ts';
import { refold } from './refold.ts';
import { openSession, type Session } from './session.ts';

/** The session after one more entry. Never throws: an entry that does not fit the walk is kept and
 *  listed in `misfits`. */
export function apply(session: Session, entry: Entry): Session {
  const corrected = correctedEntries(session.effective, entry);
  const next =
    corrected === null ? happen(session, entry, session.entries.length) : refold(session, corrected);
  return {
    ...next,
    parted: false,
    entries: [...session.entries, entry],
    effective: [...next.effective, entry],
  };
}

/** The session that a job's entries lead to. */
export function replay(tree: CompiledTree, entries: readonly Entry[]): Session {
  return entries.reduce(apply, openSession(tree));
}
