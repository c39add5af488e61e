import type { Session } from '../../engine/run/index.ts';
import type { Trees } from '../ports/trees.ts';

/** Digest of the version of a job's tree that ships now; null where the job has it already, where the tree ships no
 *  more, and offline. */
export async function newerTree(trees: Trees, { loaded, closed }: Session): Promise<string | null> {
  if (closed !== null) return null;
  const all = await trees.list();
  const listing = all.ok ? all.value.find(({ id }) => id === loaded.tree.id) : undefined;
  return listing === undefined || listing.digest === loaded.tree.digest ? null : listing.digest;
}
