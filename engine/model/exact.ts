/** An exact rational number as text: `5`, `-12`, `315/88`. */
export type Exact = string;

/** A quantity as it is stored: the exact value in the base unit, and the unit it was written in.
 *  `25,2M` for a reading in MHz is `{ value: '25200000', unit: 'MHz' }`. */
export interface StoredQuantity {
  readonly value: Exact;
  readonly unit: string;
}
