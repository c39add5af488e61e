import type Fraction from 'fraction.js';
import type { Dimension } from '../dimension.ts';

/** One function that formulas can call. Values are in base units. */
export interface FunctionRow {
  readonly arity: { readonly least: number; readonly most: number };
  /** What it gives for arguments of these kinds, or the two that do not go together. */
  readonly dimension: (
    args: readonly Dimension[],
  ) => Dimension | { readonly unlike: readonly [Dimension, Dimension] };
  /** Null where it has no value, as with a division by zero. */
  readonly evaluate: (args: readonly Fraction[]) => Fraction | null;
}
