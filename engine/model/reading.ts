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

/** How a reading is taken and cut into bands. */
export type Measure =
  | { readonly kind: 'quantity'; readonly unit: string; readonly scale: Scale }
  | { readonly kind: 'options'; readonly options: readonly Option[] }
  | {
      readonly kind: 'codes';
      /** Digits of a code: 2 for `0D`. */
      readonly digits: number;
      readonly ranges: readonly CodeRange[];
      /** In order of first mention, `other` last. */
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
