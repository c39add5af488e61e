import type { Drill } from '../../../engine/practice/drill.ts';
import { presentOf } from '../../../engine/practice/index.ts';
import { openSession, type Session } from '../../../engine/run/index.ts';

/** The board of a drill as the bench screens know boards: what its readings should be, where they are taken, what the prose
 *  says at its settings. Nothing is walked in it. */
export function sessionOfDrill(drill: Drill): Session {
  const { tree, board, equipment } = drill;
  return { ...openSession(tree, { board, laterTrees: [] }), equipment, ...presentOf(drill) };
}
