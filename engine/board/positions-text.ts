import type { Jumper } from '../model/compiled-board.ts';

/** Where jumpers sit, by jumper. */
export type Positions = Readonly<Record<string, string>>;

/** `JP12 1-2, JP13 open`, in the order of the board's own list. */
export function positionsText(positions: Positions, jumpers: readonly Jumper[], joint = ', '): string {
  return jumpers
    .filter(({ id }) => Object.hasOwn(positions, id))
    .map(({ id }) => `${id} ${positions[id]}`)
    .join(joint);
}
