import type { Conditions } from '../../next/arranging.ts';

/** What a row shows in a column: one band, by its index; several with their shares, which add up to 1 and come out independently of
 *  all other columns; or null where it says nothing, neither for nor against. */
export type Cell = number | readonly BandShare[] | null;

export interface BandShare {
  readonly band: number;
  readonly share: number;
}

/** One way in which a board can answer. */
export interface MatrixRow {
  /** Relative frequency, above 0. */
  readonly weight: number;
  /** What is to be told apart: rows of one fault need not be separated from each other. */
  readonly fault: number;
  /** One for each column. */
  readonly cells: readonly Cell[];
}

/** One reading that can be taken, once. */
export interface MatrixColumn {
  readonly minutes: number;
  /** Columns that have to be taken before. */
  readonly after?: readonly number[];
  /** Columns that must have come out in one of these bands before. */
  readonly only?: readonly { readonly column: number; readonly bands: readonly number[] }[];
  /** The conditions it is taken in. */
  readonly when?: Conditions;
}

/** Faults against readings, as published test matrices give them. A column has 30 bands at the most. */
export interface Matrix {
  readonly rows: readonly MatrixRow[];
  readonly columns: readonly MatrixColumn[];
  /** What changes of condition take; without it they take no time. */
  readonly arranging?: {
    readonly now: Conditions;
    readonly minutesTo: (wanted: Conditions, from: Conditions) => number | null;
  };
}
