import type { CompiledBoard } from '../../../engine/model/compiled-board.ts';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import type { Fetched, Trees } from '../../ports/trees.ts';

/** A tree with the board sheet that practice lays out for it. */
export interface PracticeBoard {
  readonly tree: CompiledTree;
  readonly board: CompiledBoard | null;
}

/** The tree, and the first sheet for a class of its boards: always the same one, so that a code gives everybody the same
 *  board. */
export async function practiceBoard(trees: Trees, id: string): Promise<Fetched<PracticeBoard>> {
  const tree = await trees.load(id);
  if (!tree.ok) return { ok: false, why: `The tree could not be fetched: ${tree.why}` };
  const list = await trees.boards();
  if (!list.ok) return { ok: false, why: `The board sheets could not be fetched: ${list.why}` };
  const sheet = list.value.find(({ boards }) => boards.some((board) => tree.value.boards.includes(board)));
  const board = sheet === undefined ? null : await trees.loadBoard(sheet.id);
  if (board === null) return { ok: true, value: { tree: tree.value, board } };
  if (!board.ok) return { ok: false, why: `The board sheet could not be fetched: ${board.why}` };
  return { ok: true, value: { tree: tree.value, board: board.value } };
}
