import type { Observation } from '../../model/observation.ts';
import type { Reading } from '../../model/reading.ts';
import { fromStored } from '../../quantity/index.ts';
import { conformanceProbability, type Tolerance } from './conformance-probability.ts';
import { type FourWay, fourWays, fourWayVerdict } from './four-way-verdict.ts';
import { standardUncertainty } from './standard-uncertainty.ts';

/** What a reading says of what it should be, the instrument's accuracy minded. */
export interface Verdict {
  readonly verdict: FourWay;
  /** That the value is normal, 0 to 1. */
  readonly probability: number;
}

/** The verdict on an observation by the limits it was judged by, with a guard band of w = U = 2u; null where nothing is
 *  known of the instrument, or nothing is judged by limits. */
export function verdictOf(
  { normal }: Pick<Reading, 'normal'>,
  { understood, doubt, used }: Pick<Observation, 'understood' | 'doubt' | 'used'>,
): Verdict | null {
  if (understood.kind !== 'quantity' || doubt === null || used === null || normal === 'any') return null;
  const y = fromStored(understood.quantity).valueOf();
  const u = standardUncertainty(fromStored(doubt.plusMinus).valueOf());
  const tolerances = tolerancesOf(used, normal);
  const verdicts = tolerances.map((tolerance) => fourWayVerdict(tolerance, y, 2 * u));
  const probability = tolerances.reduce((sum, one) => sum + conformanceProbability(one, y, u), 0);
  return { verdict: fourWays.find((way) => verdicts.includes(way)) ?? 'fail', probability };
}

/** Neighbouring normal bands are one tolerance. */
function tolerancesOf(
  { bands, limits }: NonNullable<Observation['used']>,
  normal: readonly string[],
): readonly Tolerance[] {
  const limit = (at: number): number | null => {
    const stored = limits[at];
    return stored === undefined ? null : fromStored(stored).valueOf();
  };
  const found: Tolerance[] = [];
  for (const [at, band] of bands.entries()) {
    if (!normal.includes(band)) continue;
    const before = normal.includes(bands[at - 1] ?? '') ? found.pop() : undefined;
    found.push({ low: before === undefined ? limit(at - 1) : before.low, high: limit(at) });
  }
  return found;
}
