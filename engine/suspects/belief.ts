import type { Fault } from '../model/fault.ts';

/** What the board may have: one fault, two at once, or (empty) none that the tree lists. */
export interface Hypothesis {
  readonly faults: readonly Fault[];
}

/** What is believed of a board after some readings. */
export interface Belief {
  readonly hypotheses: readonly Hypothesis[];
  /** How likely each is, in the order of `hypotheses`; they add up to 1. */
  readonly shares: readonly number[];
  /** How likely each band is to be read next under a hypothesis, given everything read before: slips are counted in. In the
   *  order of the reading's bands; adds up to 1. A reading that is taken already comes out as it did, but for slips. */
  predict(hypothesis: number, reading: string): readonly number[];
}
