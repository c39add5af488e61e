import { alongTree } from '../../engine/figures/along-tree.ts';
import { faultShares } from '../../engine/figures/fault-shares.ts';
import { treeWalks } from '../../engine/figures/tree-walks.ts';
import { usualSettings } from '../../engine/figures/usual-settings.ts';
import { total } from '../../engine/figures/walk-minutes.ts';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';

/** What the order of a tree takes until the walk stands at the fault's section: readings not taken before, tasks, changes of condition
 *  and waits, over every way in which the boards can answer. */
export function minutesAlong(tree: CompiledTree): {
  readonly minutes: number;
  readonly ofFault: (fault: string) => number;
} {
  const along = alongTree(tree, faultShares(tree, null), treeWalks(tree, null, usualSettings(tree)));
  const byFault = new Map(along.faults.map(({ fault, expected }) => [fault, total(expected)]));
  return { minutes: total(along.expected), ofFault: (fault) => byFault.get(fault) ?? 0 };
}
