import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Fault } from '../model/fault.ts';
import { usualOdds } from '../model/odds.ts';
import { asBrought } from '../suspects/as-brought.ts';
import { unlistedFault } from '../suspects/unlisted-fault.ts';
import { diceOf } from './dice.ts';
import { DrawnBands } from './drawn-bands.ts';
import { type DrillPlan, unlisted as unlistedName } from './drill.ts';

/** What a plan hides. */
export interface Hidden {
  /** One of the tree's, or what stands for none of them. */
  readonly fault: Fault;
  readonly isListed: boolean;
  readonly bands: DrawnBands;
}

/** Boards that do not show the tree's symptom are drawn again; a tree whose faults hardly show it takes one all the same. */
const mostBoards = 2000;

/** The board that a plan makes of a tree: a fault by weight (evenly where a trainer chose it) among boards that show the symptom, and
 *  its bands. */
export function hiddenIn(
  { seed, unlisted, boardClass, chosen }: Pick<DrillPlan, 'seed' | 'unlisted' | 'boardClass' | 'chosen'>,
  tree: CompiledTree,
): Hidden {
  const share = chosen ? 1 / (tree.faults.length + 1) : (tree.odds ?? usualOdds).unlisted;
  const className = boardClass === null ? null : (tree.boards[boardClass] ?? null);
  for (let board = 0; ; board += 1) {
    const dice = diceOf(seed, ['fault', board]);
    const isListed = !(unlisted && dice.share() < share) && tree.faults.length > 0;
    const fault = isListed
      ? dice.weighted(tree.faults, (one) => (chosen ? 1 : weightOf(one, className)))
      : unlistedFaultOf(tree);
    const bands = new DrawnBands(tree, asBrought(fault, tree), seed, board);
    const isBrought = tree.given.every(({ reading, band }) => bands.bandOf(reading) === band);
    if (isBrought || board === mostBoards) return { fault, isListed, bands };
  }
}

/** How often a fault is met on boards of a class, beside the other faults. */
export const weightOf = ({ weight, weights }: Fault, boardClass: string | null): number =>
  (boardClass === null ? undefined : weights[boardClass]) ?? weight;

const known = new WeakMap<CompiledTree, Fault>();

function unlistedFaultOf(tree: CompiledTree): Fault {
  const fault = known.get(tree) ?? {
    ...unlistedFault(tree.readings, tree.given, tree.odds ?? usualOdds),
    id: unlistedName,
    is: 'None of the faults that this tree lists',
  };
  known.set(tree, fault);
  return fault;
}
