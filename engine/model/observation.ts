import type { Exact, StoredQuantity } from './exact.ts';
import type { Twin } from './present.ts';

/** What was understood of a typed reading. */
export type Understood =
  | { readonly kind: 'quantity'; readonly quantity: StoredQuantity }
  /** Untidy values: `48..52 MHz`, `> 200k`. An open end is null; neither end belongs to an open side. */
  | {
      readonly kind: 'interval';
      readonly from: Exact | null;
      readonly to: Exact | null;
      /** Whether the end itself is one of the values: `48..52` yes, `> 200k` no. A derived reading that cannot be
       *  computed has no end at all. */
      readonly closed: boolean;
      readonly unit: string;
    }
  | { readonly kind: 'option'; readonly option: string }
  | { readonly kind: 'code'; readonly code: string }
  | { readonly kind: 'beeps'; readonly pattern: string }
  /** `3 of 10`. */
  | { readonly kind: 'tries'; readonly good: number; readonly of: number }
  /** One look at each of many alike, in their declared order. */
  | {
      readonly kind: 'each';
      readonly members: readonly Member[];
      /** The bands in which one of them is normal. */
      readonly normal: readonly string[];
    }
  /** The instrument shows that the value lies beyond its range. */
  | { readonly kind: 'overload' };

/** One of many alike. */
export interface Member {
  readonly name: string;
  readonly understood: Exclude<Understood, { readonly kind: 'each' }>;
  readonly bands: readonly string[];
}

/** How the value behaved while it was looked at. */
export const marks = ['steady', 'wanders', 'climbs', 'pulses', 'floats'] as const;
export type Mark = (typeof marks)[number];

/** The limits a value was judged by, low end first, as they stood at that moment. */
export interface UsedLimits {
  readonly bands: readonly string[];
  readonly limits: readonly StoredQuantity[];
  /** What the known-good board shows, where a limit rests on it, and where that is known from. */
  readonly twin: Twin | null;
}

/** How far a value can lie from what the instrument showed. */
export interface Doubt {
  /** The instrument's name. */
  readonly instrument: string;
  /** Half the width of what is possible. */
  readonly plusMinus: StoredQuantity;
  /** The part of the possible values in each band, in the scale's order; they add up to 1. */
  readonly shares: readonly { readonly band: string; readonly share: number }[];
}

/** One look at one reading. */
export interface Observation {
  readonly reading: string;
  /** Exactly what was typed. */
  readonly typed: string;
  readonly understood: Understood;
  readonly mark: Mark | null;
  /** The bands it counts as: one, or several where the value is untidy or, by guarded acceptance, in doubt. */
  readonly bands: readonly string[];
  /** Null where nothing is known of the instrument. */
  readonly doubt: Doubt | null;
  /** Null where nothing is cut by limits (options, codes). */
  readonly used: UsedLimits | null;
  /** What was assumed while reading it: `read as MHz`. */
  readonly remarks: readonly string[];
}
