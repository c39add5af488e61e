import type { BoardState } from '../model/entry.ts';
import type { Observation } from '../model/observation.ts';

/** The latest word on a reading. */
export interface Known {
  /** Index of the entry it comes from. */
  readonly entry: number;
  /** Null where it could not be read. */
  readonly observation: Observation | null;
  readonly board: BoardState;
  readonly at: string;
  /** Number of remedies that had been done when it was taken. */
  readonly remedies: number;
  /** Judged by a setting that was altered since: kept, but no evidence. */
  readonly stale: boolean;
  /** Part of the symptom, not measured. */
  readonly given: boolean;
}
