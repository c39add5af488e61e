import type { Exact, StoredQuantity } from './exact.ts';
import type { Twin } from './present.ts';

/** A scale at the present settings: bands in ascending order of value (so a negative rail that is
 *  judged by magnitude has `high` first). */
export interface ResolvedScale {
  /** The unit to print limits in: `MHz`. */
  readonly unit: string;
  readonly bands: readonly string[];
  /** `limits[i]` stands between `bands[i]` and `bands[i + 1]`; null where a setting is not known. */
  readonly limits: readonly (StoredQuantity | null)[];
  /** `limits[i]` itself belongs to the band below it (`bands[i]`) or above it. */
  readonly owners: readonly ('below' | 'above')[];
  /** What it should be, as one value: as the author gave it, else the middle of a narrow normal band. */
  readonly nominal: StoredQuantity | null;
  /** Settings whose value is missing; `twin` where the known-good board's is. */
  readonly missing: readonly string[];
  /** What the known-good board shows, where a limit rests on it and it is known. */
  readonly twin: Twin | null;
  /** How far each limit itself can be off, because the twin's value can; base unit's sizes, null for an exact limit. */
  readonly limitDoubts: readonly (Exact | null)[];
  /** A sentence where the limits come out in the wrong order at these settings. */
  readonly contradiction: string | null;
}
