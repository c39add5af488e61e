import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import type { Entry } from '../../../engine/model/entry.ts';
import { type Parts, replay } from '../../../engine/run/index.ts';
import { summaryOf } from '../../../player/models/summary-of.ts';
import type { Ports } from '../../../player/ports/ports.ts';
import { walkWith } from '../../helpers/bench.ts';

/** Puts a job on the bench that was walked with `answers`, each typed as at a terminal; its id is `job`. */
export const putOnBench = (ports: Ports, tree: CompiledTree, ...answers: readonly string[]): Promise<void> =>
  putOnBenchWith(ports, tree, { board: null, laterTrees: [] }, ...answers);

/** The same, on a board sheet or with other trees at hand. */
export async function putOnBenchWith(
  ports: Ports,
  tree: CompiledTree,
  parts: Parts,
  ...answers: readonly string[]
): Promise<void> {
  // As if it had all happened just now: the clock of the answers is another one.
  const entries = walkWith(tree, parts, ...answers).entries.map(
    (entry): Entry => ({ ...entry, at: ports.clock.now() }),
  );
  const job = { format: 1, kind: 'job', id: 'job', tree, ...parts, entries } as const;
  const stored = await ports.store.create(job, summaryOf('job', replay(tree, entries, parts)));
  if (!stored.ok) throw new Error(stored.problem.kind);
}
