import { fitBoard } from '../board/index.ts';
import { noEquipment } from '../doubt/index.ts';
import type { CompiledBoard } from '../model/compiled-board.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Equipment } from '../model/instrument.ts';
import type { Drill, DrillPlan } from './drill.ts';
import { toolsIn } from './tools-in.ts';

/** A board on the bench, with nothing done to it yet.
 *  @param board the sheet whose limits and settings hold there
 *  @param equipment the trainee's own instruments; tools that the plan takes away are lacking besides */
export function startDrill(
  plan: DrillPlan,
  tree: CompiledTree,
  board: CompiledBoard | null = null,
  equipment: Equipment = noEquipment,
): Drill {
  const tools = toolsIn(tree);
  const away = plan.lacking.flatMap((at) => tools[at] ?? []);
  return {
    plan,
    tree: board === null ? tree : fitBoard(tree, board).tree,
    board,
    equipment: { ...equipment, lacking: [...new Set([...equipment.lacking, ...away])] },
    events: [],
    minutes: 0,
    waited: 0,
    conditions: Object.fromEntries(tree.conditions.map(({ id, values }) => [id, values[0] ?? ''])),
    state: 'running',
  };
}
