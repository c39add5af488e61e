import type { Formula } from '../model/formula.ts';
import type { Measure } from '../model/reading.ts';

/** How one thing is cut into bands; `each` makes many alike of it. */
export type One = Exclude<Measure, { readonly kind: 'each' }>;

/** What a reading has besides its own keys. */
export interface Origin {
  /** How the reading it is like is taken. */
  readonly like: One | null;
  /** What it is computed from. */
  readonly from: Formula | null;
}

export type Quantity = Extract<One, { readonly kind: 'quantity' }>;

export const isQuantity = (measure: One): measure is Quantity => measure.kind === 'quantity';
