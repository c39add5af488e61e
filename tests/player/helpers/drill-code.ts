import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import { codeOfPlan, type DrillManner, planDrill } from '../../../engine/practice/index.ts';

/** The code of a board of this tree that has this fault. */
export const drillCode = (tree: CompiledTree, fault: string, manner: DrillManner = 'free'): string =>
  codeOfPlan(planDrill(tree, { seed: 7, manner, fault }));
