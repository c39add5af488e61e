import { noEquipment } from '../doubt/index.ts';
import type { CompiledBoard } from '../model/compiled-board.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import type { BoardState, Entry } from '../model/entry.ts';
import type { Equipment } from '../model/instrument.ts';
import type { Job } from '../model/job.ts';
import type { Present, SettingValues, Twin } from '../model/present.ts';
import type { Known } from './known.ts';
import { type LoadedTree, loadTree } from './load-tree.ts';
import { type Position, startPosition } from './position.ts';
import { twinsOf } from './twins-of.ts';
import { wordsOn } from './words-on.ts';

/** What a job is walked with besides the tree it began with. */
export type Parts = Pick<Job, 'board' | 'laterTrees'>;

/** A job replayed up to its last entry: where we are, what has been read, what was mended.
 *  A value: every step makes a new one. */
export interface Session extends Present {
  /** The tree that is walked now. */
  readonly loaded: LoadedTree;
  /** The tree that the job began with. */
  readonly firstTree: CompiledTree;
  readonly laterTrees: readonly CompiledTree[];
  /** The newer version that the job was moved to, as a digest by tree id. */
  readonly newer: ReadonlyMap<string, string>;
  readonly board: CompiledBoard | null;
  /** As they happened. */
  readonly entries: readonly Entry[];
  /** As they count now: corrected readings and settings put in place of the first ones. */
  readonly effective: readonly Entry[];
  readonly opened: boolean;
  /** Null: asked, and not known. Not in the map: not asked yet. */
  readonly settings: SettingValues;
  /** What a known-good board shows: as read in this job, else by the board sheet. */
  readonly twins: ReadonlyMap<string, Twin>;
  readonly equipment: Equipment;
  /** What the board does now, unless a reading says otherwise. */
  readonly boardState: BoardState;
  readonly position: Position;
  /** Every word on a reading, oldest first, without what was struck out. Words of other trees are among them:
   *  `latest` and `wordsOn` give those that count in the present one. */
  readonly history: ReadonlyMap<string, readonly Known[]>;
  /** Index of the last entry with which the job was taken up again. */
  readonly resumedAt: number;
  /** After a correction the later entries no longer lead along the path: they count as readings only. */
  readonly parted: boolean;
  /** Entries that no longer fit the path. */
  readonly misfits: readonly number[];
  readonly closed: { readonly mended: boolean } | null;
}

/** The session of a job in which nothing has happened yet. */
export const openSession = (tree: CompiledTree, parts: Parts = { board: null, laterTrees: [] }): Session =>
  emptySession({ firstTree: tree, board: parts.board, laterTrees: parts.laterTrees, newer: new Map() });

/** @param job of another session, the newer trees that it was moved to included */
export function emptySession(job: Pick<Session, 'firstTree' | 'laterTrees' | 'newer' | 'board'>): Session {
  const { firstTree, laterTrees, newer, board } = job;
  const loaded = loadTree(treeNow(job, firstTree), board);
  return {
    loaded,
    firstTree,
    laterTrees,
    newer,
    board,
    entries: [],
    effective: [],
    opened: false,
    settings: new Map(),
    twins: twinsOf(loaded, board),
    equipment: noEquipment,
    boardState: 'failing',
    position: startPosition(loaded),
    history: new Map(),
    resumedAt: -1,
    parted: false,
    misfits: [],
    closed: null,
  };
}

/** The version of a tree that the job is walked with. */
export function treeNow(
  { newer, laterTrees }: Pick<Session, 'newer' | 'laterTrees'>,
  tree: CompiledTree,
): CompiledTree {
  const digest = newer.get(tree.id);
  return laterTrees.find((later) => later.digest === digest) ?? tree;
}

/** The same session, with one more tree at hand that it can be handed over or moved to. */
export function withTree(session: Session, tree: CompiledTree): Session {
  const isThere = session.laterTrees.some(({ digest }) => digest === tree.digest);
  return isThere ? session : { ...session, laterTrees: [...session.laterTrees, tree] };
}

/** The latest word on a reading, or null. */
export function latest(session: Session, reading: string): Known | null {
  return wordsOn(session, reading).at(-1) ?? null;
}

/** The machine's own value, as plain data: `s-power-good` or `{ 's-no-power-good': 'proof-1' }`. */
export function machineValue(session: Session): unknown {
  return session.position.snapshot.value;
}
