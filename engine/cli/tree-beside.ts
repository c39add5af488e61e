import { dirname, join } from 'node:path';
import type { CompiledTree } from '../model/compiled-tree.ts';
import { questionOf, type Session, withTree } from '../run/index.ts';
import type { Bench } from './bench.ts';
import { loadTreeFile } from './load-tree-file.ts';

/** The session with the tree at hand that it is to be handed over to, where its file lies beside that of `treePath`.
 *  @param treePath null where no tree was named: nobody knows then where the others are */
export async function withTreeBeside(
  bench: Bench,
  session: Session,
  treePath: string | null,
): Promise<Session> {
  const question = questionOf(session);
  if (treePath === null || question.ask !== 'hand-over' || question.tree !== null) return session;
  const tree = await treeBeside(bench, treePath, question.section.tree);
  return tree === null ? session : withTree(session, tree);
}

async function treeBeside(bench: Bench, treePath: string, id: string): Promise<CompiledTree | null> {
  for (const ending of treePath.endsWith('.json') ? ['json', 'md'] : ['md', 'json']) {
    const path = join(dirname(treePath), `${id}.${ending}`);
    if (await bench.exists(path)) return loadTreeFile(bench, path);
  }
  return null;
}
