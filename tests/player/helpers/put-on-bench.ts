import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import type { Entry } from '../../../engine/model/entry.ts';
import { replay } from '../../../engine/run/index.ts';
import { summaryOf } from '../../../player/models/summary-of.ts';
import type { Ports } from '../../../player/ports/ports.ts';
import { walk } from '../../helpers/bench.ts';

/** Puts a job on the bench that was walked with `answers`, each typed as at a terminal; its id is `job`. */
export async function putOnBench(
  ports: Ports,
  tree: CompiledTree,
  ...answers: readonly string[]
): Promise<void> {
  // As if it had all happened just now: the clock of the answers is another one.
  const entries = walk(tree, ...answers).entries.map((entry): Entry => ({ ...entry, at: ports.clock.now() }));
  const job = { format: 1, kind: 'job', id: 'job', tree, laterTrees: [], board: null, entries } as const;
  const stored = await ports.store.create(job, summaryOf('job', replay(tree, entries)));
  if (!stored.ok) throw new Error(stored.problem.kind);
}
