import type { Tolerance } from './conformance-probability.ts';

/** Where a measured value is accepted with a guard band of `w`: w = r·U, with r = 0 for simple acceptance and U = 2u. Null
 *  where the guard bands leave nothing. Source: JCGM 106:2012, clause 8. */
export function acceptanceInterval({ low, high }: Tolerance, w: number): Tolerance | null {
  const accepted = { low: low === null ? null : low + w, high: high === null ? null : high - w };
  return accepted.low !== null && accepted.high !== null && accepted.low > accepted.high ? null : accepted;
}
