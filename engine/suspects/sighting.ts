import type { BoardState } from '../model/entry.ts';
import type { Share } from '../model/fault.ts';

/** One reading as evidence, with its doubt. */
export interface Sighting {
  readonly reading: string;
  /** How well each band goes with what was seen, 0..1. One band with 1 where it is clear; where it is too close to call, the
   *  part of the instrument's uncertainty that lies in each. Bands that are not named: 0. */
  readonly bands: readonly Share[];
  /** Faults that come `sometimes` show nothing of their own while the board runs. */
  readonly board: BoardState;
  /** Faults that were on the board then and have been mended since. */
  readonly alsoPresent: readonly string[];
  /** Index of the job's entry that it comes from; null where there is none. */
  readonly entry: number | null;
}
