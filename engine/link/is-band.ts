import type { Measure } from '../model/reading.ts';
import type { Named } from '../read/named.ts';
import { bandsWhere, type Quantifier } from '../scale/index.ts';
import { type LinkContext, only, report } from './link-context.ts';
import { bandsOfOne } from './members-told.ts';

/** What a clause speaks of: a reading, or a setting with options. */
export interface Subject {
  readonly name: string;
  readonly bands: readonly string[];
  /** Many alike: a band of one of them says nothing until it is said of how many. */
  readonly each: Extract<Measure, { readonly kind: 'each' }> | null;
}

/** Whether the subject has this band; reported if not, with what was probably meant. */
export function isBand(
  band: Named,
  { name, bands, each }: Subject,
  base: number,
  context: LinkContext,
): boolean {
  if (bands.includes(band.name)) return true;
  const span = { from: base + band.from, to: base + band.to };
  if (each && bandsOfOne(each).includes(band.name)) {
    const quantifiers: readonly Quantifier[] = ['any', 'one', 'several', 'all'];
    const told = quantifiers
      .filter((quantifier) => (bandsWhere(each, quantifier, [band.name]) ?? []).length > 0)
      .map((quantifier) => `${quantifier} ${name} are ${band.name}`);
    report(context, { code: 'how-many', name, band: band.name, told }, span);
    return false;
  }
  const near = context.near(band.name, bands);
  report(context, { code: 'no-band-named', name, band: band.name, bands, near }, span, {
    fix: only(near, span),
  });
  return false;
}
