import type { CompiledBoard } from '../model/compiled-board.ts';
import type { Twin } from '../model/present.ts';
import { baseUnit } from '../quantity/index.ts';
import type { LoadedTree } from './load-tree.ts';

/** What the board sheet's known-good board shows in the readings of a tree; of several days the last. */
export function twinsOf(
  { readings }: LoadedTree,
  board: Pick<CompiledBoard, 'references'> | null,
): ReadonlyMap<string, Twin> {
  const suiting = (board?.references ?? []).filter(({ reading, value }) => {
    const measure = readings.get(reading)?.measure;
    return measure?.kind === 'quantity' && baseUnit(measure.unit) === baseUnit(value.unit);
  });
  return new Map(
    suiting
      .toSorted((a, b) => a.date.localeCompare(b.date))
      .map(({ reading, value }) => [reading, { value, from: 'board sheet' }]),
  );
}
