import type { Exact, StoredQuantity } from './exact.ts';

/** What was understood of a typed reading. */
export type Understood =
  | { readonly kind: 'quantity'; readonly quantity: StoredQuantity }
  /** Untidy values: `48..52 MHz`, `> 200k`. An open end is null; neither end belongs to an open side. */
  | {
      readonly kind: 'interval';
      readonly from: Exact | null;
      readonly to: Exact | null;
      /** Whether the end itself is one of the values: `48..52` yes, `> 200k` no. */
      readonly closed: boolean;
      readonly unit: string;
    }
  | { readonly kind: 'option'; readonly option: string }
  | { readonly kind: 'code'; readonly code: string }
  /** The instrument shows that the value lies beyond its range. */
  | { readonly kind: 'overload' };

/** How the value behaved while it was looked at. */
export const marks = ['steady', 'wanders', 'climbs', 'pulses', 'floats'] as const;
export type Mark = (typeof marks)[number];

/** The limits a value was judged by, low end first, as they stood at that moment. */
export interface UsedLimits {
  readonly bands: readonly string[];
  readonly limits: readonly StoredQuantity[];
}

/** One look at one reading. */
export interface Observation {
  readonly reading: string;
  /** Exactly what was typed. */
  readonly typed: string;
  readonly understood: Understood;
  readonly mark: Mark | null;
  /** The bands it can be in: one, or several where the value is untidy. */
  readonly bands: readonly string[];
  /** Null where nothing is cut by limits (options, codes). */
  readonly used: UsedLimits | null;
  /** What was assumed while reading it: `read as MHz`. */
  readonly remarks: readonly string[];
}
