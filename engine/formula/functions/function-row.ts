import type Fraction from 'fraction.js';
import type { Dimension } from '../dimension.ts';

/** Why arguments do not go together, by their places in the list. */
export type Misfit =
  /** These two are of different kinds. */
  | { readonly unlike: readonly [number, number] }
  /** This one is no plain number. */
  | { readonly notPlain: number };

/** One function that formulas can call. Values are in base units. */
export interface FunctionRow {
  readonly arity: { readonly least: number; readonly most: number };
  /** Arguments that are zero or have no value are left out; other functions have no value without them. */
  readonly leavesOut: boolean;
  /** What it gives for arguments of these kinds. */
  readonly dimension: (args: readonly Dimension[]) => Dimension | Misfit;
  /** Null where it has no value, as with a division by zero. */
  readonly evaluate: (args: readonly Fraction[]) => Fraction | null;
}
