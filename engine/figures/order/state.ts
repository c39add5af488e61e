/** What is left of the game after some columns were taken. States that look alike are one, however they were reached. */
export interface State {
  /** Rows still possible, in ascending order, and how likely each is; the shares add up to 1. */
  readonly rows: Int16Array;
  readonly shares: Float64Array;
  /** The band that each column came out in; `untaken` where it was not taken or no longer matters. */
  readonly seen: Int8Array;
  /** Index of the conditions the board is in. */
  readonly setting: number;
  /** Columns that can still tell something and can still come to be taken. */
  readonly open: readonly number[];
  /** Expected minutes from here lie between the two; equal where nothing is left to be told apart. */
  low: number;
  high: number;
  /** Null until it was looked into; none where the game is over. */
  actions: readonly Action[] | null;
}

/** Something that can be done in a state. */
export interface Action {
  /** The last one tells something; those before it only have to be taken first. */
  readonly columns: readonly number[];
  readonly minutes: number;
  readonly ways: readonly Way[];
}

/** One way in which the last column of an action can come out. */
export interface Way {
  readonly band: number;
  readonly share: number;
  readonly to: State;
}

export const untaken = -1;
