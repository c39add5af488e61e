import type { StoredQuantity } from './exact.ts';
import type { Formula } from './formula.ts';

/** The ordered bands of a quantity and the limits between them.
 *
 *      dead  <  0.5 V  <  low  <  4.75 V  <  good  <  5.25 V  <  high
 *      bands[0] limits[0] bands[1] limits[1]  …
 */
export interface Scale {
  /** As the author wrote it: `5 V ± 5 %`. */
  readonly written: string;
  /** Low end first. */
  readonly bands: readonly string[];
  /** `limits[i]` stands between `bands[i]` and `bands[i + 1]`. */
  readonly limits: readonly Formula[];
  /** `expect` on a negative rail: −10 V of −12 V is low, so the bands run by magnitude. */
  readonly byMagnitude: boolean;
  /** The exact value it should have, where the author gave one. */
  readonly nominal: Formula | null;
}

/** One of a closed list of things that can be seen. */
export interface Option {
  readonly name: string;
  readonly means: string | null;
}

/** A run of hexadecimal codes that mean the same; `from` equals `to` for a single code. */
export interface CodeRange {
  readonly from: string;
  readonly to: string;
  readonly band: string;
  readonly means: string | null;
}

/** A beep pattern as it is heard: `long short short`, or groups of beeps with pauses between (`1-3-3`). */
export interface BeepPattern {
  /** `LSS`, or `1-3-3`. */
  readonly pattern: string;
  readonly band: string;
  readonly means: string | null;
}

/** How one thing is taken and cut into bands. */
export type SingleMeasure =
  | { readonly kind: 'quantity'; readonly unit: string; readonly scale: Scale }
  | { readonly kind: 'options'; readonly options: readonly Option[] }
  | {
      readonly kind: 'codes';
      /** Digits of a code: 2 for `0D`. */
      readonly digits: number;
      readonly ranges: readonly CodeRange[];
      /** In order of first mention, `other` last. */
      readonly bands: readonly string[];
    }
  | {
      readonly kind: 'beeps';
      readonly patterns: readonly BeepPattern[];
      /** In order of first mention, `other` last. */
      readonly bands: readonly string[];
    };

/** How a reading is taken and cut into bands. */
export type Measure =
  | SingleMeasure
  /** How often something succeeds: the bands are `never`, `sometimes`, `always`. */
  | {
      readonly kind: 'tries';
      /** So many tries in a row settle `never` and `always`. */
      readonly enough: number;
    }
  /** Many alike (pins, bits, banks), taken as one. Its bands say how many of them are out of normal:
   *
   *      all-normal   one-stuck   several-stuck   all-stuck   low+stuck
   *
   *  the last where members are wrong in different ways. */
  | {
      readonly kind: 'each';
      readonly members: readonly string[];
      readonly of: SingleMeasure;
      /** The bands in which one member is normal. */
      readonly normal: readonly string[];
      readonly bands: readonly string[];
    };

/** A reading says nothing while `reading` shows a band outside `bands`. */
export interface Need {
  readonly reading: string;
  readonly bands: readonly string[];
}

/** A named thing that can be measured or seen. */
export interface Reading {
  readonly id: string;
  readonly is: string;
  readonly measure: Measure;
  /** It stands for the ends of a call and is never asked: its id is the calling section's. */
  readonly call: boolean;
  /** It is computed from readings and settings, never typed. */
  readonly from: Formula | null;
  /** The reading it is the same as, taken in another condition: what a fault shows there it shows here too,
   *  unless it says otherwise. */
  readonly like: string | null;
  /** The conditions it is taken in: `{ cards: 'out' }`. */
  readonly when: Readonly<Record<string, string>>;
  /** What must have been seen before it may be taken. */
  readonly onlyIf: readonly Need[];
  /** What a known-good board shows, where the author knows; `twin` in limits falls back on it. */
  readonly usual: StoredQuantity | null;
  /** The bands a healthy board shows, or `any` where nothing is judged. */
  readonly normal: readonly string[] | 'any';
  readonly needs: readonly Need[];
  /** The band it shows while something it needs is missing. */
  readonly hidden: string | null;
  /** Readings to take before this one. */
  readonly after: readonly string[];
  readonly power: 'on' | 'off' | null;
  /** Tools. */
  readonly with: readonly string[];
  /** Instrument set-up: range, coupling, trigger. */
  readonly set: string | null;
  /** Where to touch; the first is red or channel 1. */
  readonly points: readonly string[];
  /** Hands-on minutes. */
  readonly minutes: number;
  /** Minutes of waiting besides. */
  readonly wait: number;
  readonly source: string | null;
}
