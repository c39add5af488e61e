import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import { replay } from '../../engine/run/index.ts';
import { say } from '../helpers/bench.ts';
import type { Figure } from './figure.ts';
import { atFirstCheck } from './step.bench.ts';

/** A job of 500 entries on a tree of 300 checks, opened from its file. */
export async function bench(): Promise<readonly Figure[]> {
  let session = atFirstCheck(300);
  while (session.entries.length < 500)
    session = say(session, session.entries.length % 7 === 0 ? 'note: still here' : '4.98 V');
  const text = JSON.stringify(session.loaded.tree);
  const times = Array.from({ length: 15 }, () => {
    // A tree is loaded once: each time it is another one.
    const tree: CompiledTree = JSON.parse(text);
    const begun = performance.now();
    replay(tree, session.entries);
    return performance.now() - begun;
  }).sort((a, b) => a - b);
  return [
    {
      name: '500 entries replayed, tree loaded from JSON; median',
      value: times[7] ?? 0,
      unit: 'ms',
      goal: 50,
    },
  ];
}
