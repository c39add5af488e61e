import type { CompiledBoard } from '../model/compiled-board.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import { type DrillManner, type DrillPlan, unlisted as unlistedName } from './drill.ts';
import { hiddenIn } from './hidden-in.ts';
import { toolsIn } from './tools-in.ts';

interface Wishes {
  /** 0 .. 2^32 − 1. */
  readonly seed: number;
  readonly manner: DrillManner;
  /** The board may have a fault that the tree does not list. */
  readonly unlisted?: boolean;
  /** The fault it must hide, by id, or `unlisted`: the first seed from the given one on that does. */
  readonly fault?: string | null;
  /** The sheet of the board: faults come as often as on its class. */
  readonly board?: Pick<CompiledBoard, 'boards'> | null;
  /** Tools that the trainee must do without. */
  readonly lacking?: readonly string[];
}

/** How much of a digest a code carries: enough to tell versions of a tree apart. */
export const digestLength = 5;

/** Seeds that are tried for a chosen fault: as many as the tree has faults, on the average. */
const mostSeeds = 200_000;

/** What a drill is made from. The seed given is the one taken, but for a chosen fault.
 *  @throws where the tree has no fault of the chosen name, or one that does not go with its symptom */
export function planDrill(tree: CompiledTree, wishes: Wishes): DrillPlan {
  const { seed, manner, unlisted = false, fault = null, board = null, lacking = [] } = wishes;
  const place = tree.boards.findIndex((name) => board?.boards.includes(name));
  const tools = toolsIn(tree);
  const plan: DrillPlan = {
    tree: tree.id,
    digest: tree.digest.slice(0, digestLength),
    seed: seed >>> 0,
    manner,
    unlisted: unlisted || fault === unlistedName,
    boardClass: place < 0 ? null : place,
    chosen: fault !== null,
    lacking: tools.flatMap((tool, at) => (lacking.includes(tool) ? [at] : [])),
  };
  if (fault === null) return plan;
  for (let step = 0; step < mostSeeds; step += 1) {
    const tried = { ...plan, seed: (plan.seed + step) >>> 0 };
    if (hiddenIn(tried, tree).fault.id === fault) return tried;
  }
  throw new Error(`expected a seed that hides "${fault}" in "${tree.id}"`);
}
