import { bandsOf } from '../scale/index.ts';
import type { Belief } from '../suspects/belief.ts';
import type { Check } from './check.ts';
import { groupRows } from './group-rows.ts';

/** What every hypothesis makes every check show, as plain numbers.
 *
 *      likely     columns of check 0      columns of check 1     …
 *      row 0      low   good  high        none  pulses
 *      row 1      …                                              each check's part of a row adds up to 1
 */
export interface Tables {
  readonly checks: number;
  /** Columns of one row. */
  readonly width: number;
  /** `start[c]` is the first column of check c; one more stands at the end. */
  readonly start: Int32Array;
  /** `likely[row * width + column]`. */
  readonly likely: Float64Array;
  /** `doubt[row * checks + c]`: what check c leaves open when it is known what the board has, in bits. */
  readonly doubt: Float64Array;
  /** Place of each row in the belief's hypotheses. */
  readonly places: readonly number[];
  /** How likely each row is; adds up to 1. */
  readonly shares: Float64Array;
  /** Rows with the same number are told apart by no check. */
  readonly groups: Int32Array;
}

/** Hypotheses less likely than this move no figure that anybody reads. */
const least = 1e-7;

export function tablesOf(belief: Belief, checks: readonly Check[]): Tables {
  const start = new Int32Array(checks.length + 1);
  for (const [at, { reading }] of checks.entries())
    start[at + 1] = (start[at] ?? 0) + bandsOf(reading).length;
  const width = start[checks.length] ?? 0;
  const places = belief.shares.flatMap((share, place) => (share > least ? [place] : []));
  const total = places.reduce((sum, place) => sum + (belief.shares[place] ?? 0), 0);
  const shares = Float64Array.from(places, (place) => (belief.shares[place] ?? 0) / total);
  const likely = new Float64Array(places.length * width);
  const doubt = new Float64Array(places.length * checks.length);
  for (const [row, place] of places.entries()) {
    for (const [at, { reading }] of checks.entries()) {
      const bands = belief.predict(place, reading.id);
      const from = row * width + (start[at] ?? 0);
      let open = 0;
      for (let band = 0; band < bands.length; band += 1) {
        const share = bands[band] as number;
        likely[from + band] = share;
        if (share > 0) open -= share * Math.log2(share);
      }
      doubt[row * checks.length + at] = open;
    }
  }
  const groups = groupRows(likely, width, places.length);
  return { checks: checks.length, width, start, likely, doubt, places, shares, groups };
}
