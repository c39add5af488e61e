import { acceptanceInterval } from './acceptance-interval.ts';
import type { Tolerance } from './conformance-probability.ts';

/** Best first. */
export const fourWays = ['pass', 'conditional pass', 'conditional fail', 'fail'] as const;
export type FourWay = (typeof fourWays)[number];

const within = ({ low, high }: Tolerance, y: number): boolean =>
  (low === null || y >= low) && (high === null || y <= high);

/** What a measured value `y` says of a tolerance with a guard band of `w` on both sides of each limit.
 *
 *      fail | conditional fail | conditional pass | pass …
 *          T−w                 T                 T+w
 *
 *  Source: ILAC-G8:09/2019, 4.2.3. */
export function fourWayVerdict(tolerance: Tolerance, y: number, w: number): FourWay {
  const accepted = acceptanceInterval(tolerance, w);
  if (accepted !== null && within(accepted, y)) return 'pass';
  if (within(tolerance, y)) return 'conditional pass';
  const widened = acceptanceInterval(tolerance, -w);
  return widened !== null && within(widened, y) ? 'conditional fail' : 'fail';
}
