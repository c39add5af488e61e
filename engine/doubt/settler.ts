import type { StoredQuantity } from '../model/exact.ts';

/** What would settle a reading that leaves several bands open. */
export type Settler =
  | { readonly kind: 'instrument'; readonly instrument: string; readonly plusMinus: StoredQuantity }
  | {
      readonly kind: 'range';
      readonly instrument: string;
      readonly upTo: StoredQuantity;
      readonly plusMinus: StoredQuantity;
    }
  /** The mean of so many readings with the same instrument. */
  | { readonly kind: 'average'; readonly of: number; readonly plusMinus: StoredQuantity }
  /** So many tries in a row. */
  | { readonly kind: 'tries'; readonly of: number }
  /** The same reading on a known-good board. */
  | { readonly kind: 'twin' }
  | { readonly kind: 'setting'; readonly setting: string };
