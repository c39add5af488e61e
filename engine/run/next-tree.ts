import type { CompiledTree } from '../model/compiled-tree.ts';
import { type Session, treeNow } from './session.ts';

/** The tree at hand that goes by this id, in the version that the job is walked with; else null. */
export function nextTree(session: Session, id: string): CompiledTree | null {
  const { firstTree, laterTrees } = session;
  const found = laterTrees.findLast((tree) => tree.id === id) ?? (firstTree.id === id ? firstTree : null);
  return found === null ? null : treeNow(session, found);
}
