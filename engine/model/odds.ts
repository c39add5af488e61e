/** What a tree takes for granted where readings are weighed against each other. */
export interface Odds {
  /** How often a reading is taken for another: a slip of the probe, a bad contact. 0..1. */
  readonly slip: number;
  /** How often a board has none of the faults of its tree. 0..1. */
  readonly unlisted: number;
  /** How often a reading is normal on such a board. 0..1. */
  readonly unlistedNormal: number;
}

export const usualOdds: Odds = { slip: 0.02, unlisted: 0.05, unlistedNormal: 0.8 };
