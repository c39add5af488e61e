import type { Drill } from '../../../engine/practice/drill.ts';
import { misfitOf, planOfCode, startDrill } from '../../../engine/practice/index.ts';
import type { Ports } from '../../ports/ports.ts';
import type { Fetched } from '../../ports/trees.ts';
import { keptDrill } from './kept-drill.ts';
import { practiceBoard } from './practice-board.ts';

/** The drill of a code, as far as it was played on this device. */
export async function loadDrill({ trees, practice }: Ports, code: string): Promise<Fetched<Drill>> {
  const plan = planOfCode(code);
  if (!plan.ok) return { ok: false, why: plan.problem };
  const laidOut = await practiceBoard(trees, plan.value.tree);
  if (!laidOut.ok) return laidOut;
  const { tree, board } = laidOut.value;
  const misfit = misfitOf(plan.value, tree);
  if (misfit !== null) return { ok: false, why: misfit };
  return { ok: true, value: { ...startDrill(plan.value, tree, board), ...keptDrill(practice, code)?.drill } };
}
