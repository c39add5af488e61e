import { type Box, subtract } from '../combinations/box.ts';
import type { Jumper } from '../model/compiled-board.ts';
import type { JumperRow } from './jumper-rows.ts';
import type { Positions } from './positions-text.ts';

const mostBoxes = 2000;

/** Positions that no row holds for. */
export interface Uncovered {
  /** Some of them; null where there are none. */
  readonly example: Positions | null;
  readonly count: number;
}

/** What the rows leave of all positions that these jumpers can be in; null where they leave too many pieces to look through. */
export function uncoveredPositions(
  jumpers: readonly Jumper[],
  rows: readonly Pick<JumperRow, 'at'>[],
): Uncovered | null {
  let left: readonly Box[] = [Object.fromEntries(jumpers.map(({ id, positions }) => [id, positions]))];
  for (const { at } of rows) {
    const cut = Object.fromEntries(Object.entries(at).map(([jumper, position]) => [jumper, [position]]));
    left = left.flatMap((box) => subtract(box, cut));
    if (left.length > mostBoxes) return null;
  }
  const [first] = left;
  const example =
    first && Object.fromEntries(Object.entries(first).map(([jumper, [position = '']]) => [jumper, position]));
  return { example: example ?? null, count: left.reduce((sum, box) => sum + sizeOf(box), 0) };
}

const sizeOf = (box: Box): number =>
  Object.values(box).reduce((product, positions) => product * positions.length, 1);
