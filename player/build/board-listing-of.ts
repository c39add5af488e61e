import type { CompiledBoard } from '../../engine/model/compiled-board.ts';
import type { BoardListing } from '../ports/trees.ts';

/** What the opening needs to know of a board sheet. */
export function boardListingOf({ id, title, boards, digest, points, jumpers }: CompiledBoard): BoardListing {
  return { id, title, boards, digest, points: Object.keys(points).length, jumpers: jumpers.length };
}
