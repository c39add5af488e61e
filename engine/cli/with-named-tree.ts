import type { CompiledTree } from '../model/compiled-tree.ts';
import { apply, entryFor, questionOf, type Session, withTree } from '../run/index.ts';
import { type Bench, CannotRun } from './bench.ts';

/** A job that was begun already, and the tree that was named with it: it is handed over to that one, or moved to it where it
 *  is newer and that is wanted; else it goes on with the tree that it has, and that is said. */
export function withNamedTree(
  bench: Bench,
  session: Session,
  tree: CompiledTree,
  move: { readonly newer: boolean; readonly at: string },
): Session {
  const question = questionOf(session);
  if (question.ask === 'hand-over' && question.section.tree === tree.id) {
    return question.tree === null || move.newer ? withTree(session, tree) : session;
  }
  const now = session.loaded.tree;
  if (tree.id !== now.id) {
    if (move.newer)
      throw new CannotRun(`this job is walked with "${now.id}", and "${tree.id}" is no version of it`);
    const isOurs = [session.firstTree, ...session.laterTrees].some(({ id }) => id === tree.id);
    if (!isOurs) bench.err(`This job is walked with "${now.title}" and goes on with that one`);
    return session;
  }
  if (tree.digest === now.digest) return session;
  if (!move.newer) {
    bench.err(
      `This job goes on with the version of "${now.title}" that it was walked with so far; --newer moves it to the one that you named`,
    );
    return session;
  }
  return moved(bench, withTree(session, tree), tree, move.at);
}

function moved(bench: Bench, session: Session, { digest, title }: CompiledTree, at: string): Session {
  const entry = entryFor(session, { say: 'newer', digest }, at);
  if (!entry.ok) throw new CannotRun(entry.refusal.text);
  const next = apply(session, entry.value);
  const lost = next.misfits.filter((index) => !session.misfits.includes(index)).map((index) => index + 1);
  const parted =
    lost.length === 0
      ? ''
      : `. ${lost.length === 1 ? 'Entry' : 'Entries'} ${lost.join(', ')} no longer lead along its way and count as readings only`;
  bench.err(`This job goes on with the newer version of "${title}"${parted}`);
  return next;
}
