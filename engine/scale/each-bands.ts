import type { Measure } from '../model/reading.ts';

type Each = Extract<Measure, { readonly kind: 'each' }>;

export type Quantifier = 'any' | 'all' | 'one' | 'several';

/** All members are normal. */
export const allNormal = 'all-normal';

const counts = ['one', 'several', 'all'] as const;

/**
 * The bands of many alike, from the bands of one. Everything that matters of them is how many are out of normal, and how.
 *
 *     bands good, low, stuck; normal good; five members
 *       all-normal  one-low several-low all-low  one-stuck several-stuck all-stuck  low+stuck
 */
export function eachBands(
  members: number,
  bands: readonly string[],
  normal: readonly string[],
): readonly string[] {
  const wrong = bands.filter((band) => !normal.includes(band));
  const some = members > 2 ? counts : (['one', 'all'] as const);
  return [
    allNormal,
    ...wrong.flatMap((band) => some.map((count) => `${count}-${band}`)),
    ...mixtures(wrong).map((mixture) => mixture.join('+')),
  ];
}

/** Every choice of two or more. */
function mixtures(wrong: readonly string[]): readonly (readonly string[])[] {
  const all = wrong.reduce<readonly (readonly string[])[]>(
    (sofar, band) => sofar.concat(sofar.map((one) => one.concat(band))),
    [[]],
  );
  return all.filter(({ length }) => length > 1);
}

/** The band of the whole, where each member is in one band. */
export function eachBandOf(
  { members, normal }: Each,
  found: readonly string[],
  bandsOfOne: readonly string[],
): string {
  const wrong = found.filter((band) => !normal.includes(band));
  const kinds = bandsOfOne.filter((band) => wrong.includes(band));
  const [only] = kinds;
  if (only === undefined) return allNormal;
  if (kinds.length > 1) return kinds.join('+');
  const count = wrong.length === 1 ? 'one' : wrong.length === members.length ? 'all' : 'several';
  return `${count}-${only}`;
}

/** The bands of the whole in which so many members are in one of `named`; null where the bands of the whole do not tell.
 *
 *      any … are low, stuck     at least one member is: told for bands out of normal
 *      one … is stuck           one member is, and the others are normal
 *      several / all … are stuck
 *      all … are good           told where `named` holds every normal band
 */
export function bandsWhere(
  { bands, normal }: Each,
  quantifier: Quantifier,
  named: readonly string[],
): readonly string[] | null {
  const wrong = named.filter((band) => !normal.includes(band));
  if (quantifier === 'all' && wrong.length === 0 && normal.every((band) => named.includes(band)))
    return [allNormal];
  if (wrong.length !== named.length) return null;
  if (quantifier !== 'any') {
    return wrong.length === 1 ? bands.filter((band) => band === `${quantifier}-${wrong[0]}`) : null;
  }
  return bands.filter((band) =>
    band.includes('+')
      ? band.split('+').some((one) => wrong.includes(one))
      : counts.some((count) => wrong.some((one) => band === `${count}-${one}`)),
  );
}
