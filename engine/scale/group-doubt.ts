import type { Doubt, Member } from '../model/observation.ts';
import type { Reading } from '../model/reading.ts';
import { compareQuantities } from '../quantity/index.ts';
import { groupShares } from './group-shares.ts';

/** The doubt of many alike, from those of its members: the greatest width, and the parts of the bands of the whole. Null
 *  where nothing is known of an instrument for any member. */
export function groupDoubt(
  reading: Reading,
  members: readonly (Pick<Member, 'bands'> & { readonly doubt: Doubt | null })[],
): Doubt | null {
  const doubts = members.map(({ doubt }) => doubt).filter((doubt) => doubt !== null);
  const [first, ...others] = doubts;
  if (first === undefined) return null;
  const widest = others.reduce(
    (sofar, next) => (compareQuantities(next.plusMinus, sofar.plusMinus) > 0 ? next : sofar),
    first,
  );
  const shares = members.map(
    ({ bands, doubt }) => doubt?.shares ?? bands.map((band) => ({ band, share: 1 / bands.length })),
  );
  return { ...widest, shares: groupShares(reading, shares) };
}
