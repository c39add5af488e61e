import type { Reading } from '../model/reading.ts';
import { type Arranging, arrangingOf } from '../next/index.ts';
import type { Drill } from './drill.ts';
import { SimulatedBoard } from './simulated-board.ts';

/** What stays the same from the first event of a drill to its last. */
export interface Ground {
  readonly board: SimulatedBoard;
  readonly readings: ReadonlyMap<string, Reading>;
  readonly arranging: Arranging;
}

const known = new WeakMap<Drill['plan'], { readonly of: Drill; readonly ground: Ground }>();

/** Kept beside the drill, which is plain JSON. */
export function groundOf(drill: Drill): Ground {
  const { plan, tree, board, equipment } = drill;
  const before = known.get(plan);
  if (before?.of.tree === tree && before.of.board === board && before.of.equipment === equipment) {
    return before.ground;
  }
  const ground: Ground = {
    board: new SimulatedBoard(plan, tree, board, equipment),
    readings: new Map(tree.readings.map((reading) => [reading.id, reading])),
    arranging: arrangingOf(tree, drill.conditions),
  };
  known.set(plan, { of: drill, ground });
  return ground;
}
