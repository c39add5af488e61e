/** What a board is in: `{ cards: 'out' }`. */
export type Conditions = Readonly<Record<string, string>>;

/** What the board is in now, and what it takes to bring it into other conditions. */
export interface Arranging {
  readonly now: Conditions;
  /** Minutes, waiting included, until the board is as `wanted`; what that does not name does not matter. Null where it cannot
   *  be brought about. */
  readonly minutesTo: (wanted: Conditions, from: Conditions) => number | null;
}
