import type { Check } from './check.ts';

/** A check that the tree calls free still takes a look. */
const least = 0.1;

/** Minutes of a check. A minute of waiting counts as a minute of work: the job is as long as its clock. */
export const minutesOf = ({ minutes, wait }: Pick<Check, 'minutes' | 'wait'>): number =>
  Math.max(least, minutes + wait);
