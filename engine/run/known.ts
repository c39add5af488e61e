import type { BoardState } from '../model/entry.ts';
import type { Observation } from '../model/observation.ts';

/** The latest word on a reading. */
export interface Known {
  readonly reading: string;
  /** Index of the entry it comes from. */
  readonly entry: number;
  /** The bands it can be in; empty where it could not be read. */
  readonly bands: readonly string[];
  /** Null where it could not be read, or is known from the symptom alone. */
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
