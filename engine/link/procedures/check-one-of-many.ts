import type { OneOfMany } from '../../names/one-of-many.ts';
import type { Named } from '../../read/named.ts';
import { isBand } from '../is-band.ts';
import { type LinkContext, only, report } from '../link-context.ts';
import { bandsOfOne } from '../members-told.ts';
import { placeIn } from '../place-in.ts';

/** Tells why there is no such one of many alike. */
export function checkOneOfMany(one: OneOfMany, value: Named, from: number, context: LinkContext): void {
  const { group: name, band } = one;
  const group = partOf(value, name, value.name.lastIndexOf(name));
  const word = partOf(value, band, 'the '.length);
  const span = placeIn(from, group);
  const measure = context.readings.get(name)?.measure;
  if (measure === undefined) {
    const many = [...context.readings].filter(([, reading]) => reading.measure.kind === 'each');
    const near = context.near(
      name,
      many.map(([id]) => id),
    );
    report(context, { code: 'no-reading-named', name, near }, span, { fix: only(near, span) });
  } else if (measure.kind !== 'each') {
    report(context, { code: 'not-many', name, band, given: true }, span);
  } else {
    const wrong = bandsOfOne(measure).filter((each) => !measure.normal.includes(each));
    if (measure.normal.includes(band))
      report(context, { code: 'one-that-is-normal', name, band, wrong }, placeIn(from, word));
    else isBand(word, { name, bands: wrong, each: null }, from, context);
  }
}

const partOf = (value: Named, name: string, at: number): Named => ({
  name,
  from: value.from + at,
  to: value.from + at + name.length,
});
