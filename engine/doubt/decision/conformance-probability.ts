import normalCdf from '@stdlib/stats-base-dists-normal-cdf';

/** What is permitted, both ends included; an end that is null is open. */
export interface Tolerance {
  readonly low: number | null;
  readonly high: number | null;
}

/** The probability that a value measured as `y` with the standard uncertainty `u` lies within the tolerance, normally
 *  distributed. Source: JCGM 106:2012, clause 7. */
export function conformanceProbability({ low, high }: Tolerance, y: number, u: number): number {
  const below = (limit: number): number => normalCdf(limit, y, u);
  return (high === null ? 1 : below(high)) - (low === null ? 0 : below(low));
}
