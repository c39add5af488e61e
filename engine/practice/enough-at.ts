import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Belief } from '../suspects/belief.ts';
import type { Debrief, DebriefStep } from './debrief.ts';
import { unlisted } from './drill.ts';
import { looksOf } from './looks-alike.ts';

/** From this share on a suspect, or those that no check tells from it, can be named. */
export const enoughShare = 0.95;

/** Whether what is believed is enough to name a fault. */
export const enoughAt = ({ hypotheses, shares }: Belief, tree: CompiledTree): boolean =>
  isEnough(
    hypotheses.map(({ faults }, at) => [faults[0]?.id ?? unlisted, shares[at] ?? 0] as const),
    tree,
  );

/** Whether the evidence was enough at a step. */
export const enoughIn = (step: DebriefStep, hypotheses: Debrief['hypotheses'], tree: CompiledTree): boolean =>
  isEnough(
    hypotheses.map(({ id }, at) => [id, step.shares[at] ?? 0] as const),
    tree,
  );

function isEnough(shares: readonly (readonly [id: string, share: number])[], tree: CompiledTree): boolean {
  const looks = looksOf(tree);
  const sums = new Map<string, number>();
  for (const [id, share] of shares) {
    const look = looks.get(id) ?? id;
    sums.set(look, (sums.get(look) ?? 0) + share);
  }
  return Math.max(...sums.values()) >= enoughShare;
}
