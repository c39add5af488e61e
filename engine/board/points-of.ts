import type { CompiledBoard, TestPoint } from '../model/compiled-board.ts';
import type { Reading } from '../model/reading.ts';

/** Where to touch for a reading on this board: as the sheet says for it, else for the reading it is like. */
export function pointsOf(
  { points }: Pick<CompiledBoard, 'points'>,
  { id, like }: Pick<Reading, 'id' | 'like'>,
): readonly TestPoint[] {
  const name = [id, like].find((one) => one !== null && Object.hasOwn(points, one));
  return points[name ?? ''] ?? [];
}
