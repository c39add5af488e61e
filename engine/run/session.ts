import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Entry } from '../model/entry.ts';
import type { Equipment } from '../model/instrument.ts';
import type { Present, SettingValues, Twin } from '../model/present.ts';
import type { Known } from './known.ts';
import { type LoadedTree, loadTree } from './load-tree.ts';
import { type Position, startPosition } from './position.ts';

/** A job replayed up to its last entry: where we are, what has been read, what was mended.
 *  A value: every step makes a new one. */
export interface Session extends Present {
  readonly loaded: LoadedTree;
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
  /** Whether the board shows the tree's symptom; null until asked. */
  readonly symptom: boolean | null;
  readonly headAcknowledged: boolean;
  readonly position: Position;
  /** Every word on a reading, oldest first, without what was struck out. */
  readonly history: ReadonlyMap<string, readonly Known[]>;
  /** Index of the last entry with which the job was taken up again. */
  readonly resumedAt: number;
  /** After a correction the later entries no longer lead along the path: they count as readings only. */
  readonly parted: boolean;
  /** Entries that no longer fit the path. */
  readonly misfits: readonly number[];
  readonly closed: { readonly mended: boolean } | null;
}

/** Nobody has said what is at the bench: no reading is in doubt, no tool is missing. */
const bareHands: Equipment = { instruments: [], lacking: [], rule: 'guarded' };

/** The session of a job in which nothing has happened yet. */
export function openSession(tree: CompiledTree): Session {
  return emptySession(loadTree(tree));
}

export function emptySession(loaded: LoadedTree): Session {
  return {
    loaded,
    entries: [],
    effective: [],
    opened: false,
    settings: new Map(),
    twins: new Map(),
    equipment: bareHands,
    symptom: null,
    headAcknowledged: false,
    position: startPosition(loaded),
    history: new Map(),
    resumedAt: -1,
    parted: false,
    misfits: [],
    closed: null,
  };
}

/** The latest word on a reading, or null. */
export function latest(session: Session, reading: string): Known | null {
  return session.history.get(reading)?.at(-1) ?? null;
}

/** The machine's own value, as plain data: `s-power-good` or `{ 's-no-power-good': 'proof-1' }`. */
export function machineValue(session: Session): unknown {
  return session.position.snapshot.value;
}
