import type { Measure, SingleMeasure } from '../model/reading.ts';
import { bandsOf, bandsWhere, type Quantifier } from '../scale/index.ts';

type Each = Extract<Measure, { readonly kind: 'each' }>;

/** The bands that one of many alike can be in. */
export const bandsOfOne = ({ of }: Each): readonly string[] =>
  bandsOf({ measure: of satisfies SingleMeasure });

/** Conditions on many alike that their bands can tell, as examples. */
export function membersTold(name: string, each: Each): readonly string[] {
  const wrong = bandsOfOne(each).filter((band) => !each.normal.includes(band));
  const [first = ''] = wrong;
  const asked: readonly (readonly [Quantifier, readonly string[]])[] = [
    ['all', each.normal],
    ['any', wrong],
    ['one', [first]],
    ['several', [first]],
    ['all', [first]],
  ];
  return asked
    .filter(([quantifier, bands]) => (bandsWhere(each, quantifier, bands) ?? []).length > 0)
    .map(([quantifier, bands]) => `${quantifier} ${name} are ${bands.join(', ')}`);
}
