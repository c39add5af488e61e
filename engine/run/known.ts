import type { BoardState } from '../model/entry.ts';
import type { Observation } from '../model/observation.ts';

/** One word on a reading. */
export interface Known {
  readonly reading: string;
  /** Index of the entry it comes from. */
  readonly entry: number;
  /** The bands it can be in; empty where it could not be read. */
  readonly bands: readonly string[];
  /** All bands of the reading when it was taken. */
  readonly cut: readonly string[];
  /** Null where it could not be read, is known from the symptom alone, or is the end of a call. */
  readonly observation: Observation | null;
  readonly board: BoardState;
  readonly at: string;
  /** How many remedies had been done when it was taken. */
  readonly remedies: number;
  /** Judged by a setting that was altered since: kept, but no evidence. */
  readonly stale: boolean;
  /** Part of the symptom, not measured. */
  readonly given: boolean;
}
