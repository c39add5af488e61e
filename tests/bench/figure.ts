/** One measured figure and what it should be; ratios are taken side by side in the same run. */
export interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  /** The most it should be; null for a figure that is only told. */
  readonly goal: number | null;
}
