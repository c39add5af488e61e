import type { CompiledBoard } from '../model/compiled-board.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Fault } from '../model/fault.ts';
import { mends } from '../model/mends.ts';
import type { Session } from '../run/index.ts';
import type { TypedSettings } from './auto-answer.ts';
import { FaultBoard, type Way } from './fault-board.ts';

/** Where a walk on a board with one fault ended. */
export interface Arrival {
  readonly arrived: boolean;
  readonly session: Session;
  /** Why an answer made for this board was not taken; null where all were. */
  readonly refused: string | null;
}

/** Which of several ways is taken, for something that goes by this name. */
export type Choose = (name: string, of: number) => number;

/** Walks a tree as a board with `fault` answers: each reading in a band that the fault shows, `choose` where it can show
 *  several, until a section of that fault, a stop, or a question with no answer.
 *  @param settings what is typed for them; what is not named has the value that the fault sets, or the usual one */
export function walkFault(
  tree: CompiledTree,
  fault: Fault,
  choose: Choose,
  settings: TypedSettings = {},
  board: CompiledBoard | null = null,
): Arrival {
  let way = new FaultBoard(tree, fault, settings, board).walk();
  while (way.kind === 'fork') {
    const chosen: (() => Way) | undefined = way.ways[choose(way.reading, way.ways.length)] ?? way.ways[0];
    way = (chosen as () => Way)();
  }
  return arrivalOf(fault, way);
}

/** Every such walk, one for each way in which the board can answer. Two of them share all that stands before they part. */
export function* everyWalk(
  tree: CompiledTree,
  fault: Fault,
  settings: TypedSettings = {},
  board: CompiledBoard | null = null,
): Generator<Arrival> {
  const open: (() => Way)[] = [() => new FaultBoard(tree, fault, settings, board).walk()];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const way = next();
    if (way.kind === 'fork') open.push(...way.ways.toReversed());
    else yield arrivalOf(fault, way);
  }
}

function arrivalOf(fault: Fault, { session, refused }: Extract<Way, { readonly kind: 'end' }>): Arrival {
  const { section } = session.position;
  const arrived = mends(section, fault.id);
  return { arrived, session, refused };
}
