import type { Understood } from '../model/observation.ts';
import type { Measure } from '../model/reading.ts';

type Tries = Extract<Measure, { kind: 'tries' }>;
type Counted = Extract<Understood, { kind: 'tries' }>;

/** The bands that a count can mean. What always worked, or never did, so far may still do otherwise until there were
 *  enough tries. */
export function judgeTries({ enough }: Tries, { good, of }: Counted): readonly string[] {
  if (good > 0 && good < of) return ['sometimes'];
  if (good === 0) return of >= enough ? ['never'] : ['never', 'sometimes'];
  return of >= enough ? ['always'] : ['sometimes', 'always'];
}

/** How often something may happen in one try and still stay away in all of `of` tries with a chance of 5 %: 1 − 0.05^(1/of),
 *  from the binomial distribution. */
export const unseenRate = (of: number): number => 1 - 0.05 ** (1 / of);

/** What too few tries leave open, in words; null where the count settles it. */
export function tooFewTries({ enough }: Tries, { good, of }: Counted): string | null {
  if ((good > 0 && good < of) || of >= enough) return null;
  const percent = Math.round(unseenRate(of) * 100);
  const so = `would go unseen in ${of === 1 ? 'one try' : `${of} tries`} one time in twenty`;
  const what = good === 0 ? `A success that comes in ${percent} %` : `A failure that comes in ${percent} %`;
  return `${what} of the tries ${so}: ${enough} in a row settle it`;
}
