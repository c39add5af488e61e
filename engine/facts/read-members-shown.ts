import type { Share } from '../model/fault.ts';
import type { Path } from '../model/front-matter.ts';
import type { Measure, Reading } from '../model/reading.ts';
import { bandsOf, bandsWhere, memberReading, type Quantifier } from '../scale/index.ts';
import { checkBand } from './check-band.ts';
import type { FactsContext } from './facts-context.ts';
import { oneOrMore, type RawTable } from './raw.ts';

type Each = Extract<Measure, { readonly kind: 'each' }>;

const quantifiers: readonly string[] = ['any', 'one', 'several', 'all'] satisfies Quantifier[];

export const saysHowMany = (table: RawTable): boolean =>
  Object.keys(table).some((key) => quantifiers.includes(key));

/** What a fault shows in many alike: `{ one: stuck }`, `{ any: [stuck, floats] }`; the bands of the whole that this can be,
 *  in equal shares. */
export function readMembersShown(
  reading: Reading,
  measure: Each,
  table: RawTable,
  path: Path,
  context: FactsContext,
): readonly Share[] {
  const one = memberReading(reading);
  const shown = new Set<string>();
  for (const key of context.keysOf(path, table)) {
    const place = [...path, key];
    if (!quantifiers.includes(key)) {
      const span = context.spanOf(place, 'key');
      context.at(span, { code: 'unknown-key', key, near: [], keys: quantifiers });
      continue;
    }
    const bands = oneOrMore(table[key]).filter((band, index) => {
      const at = Array.isArray(table[key]) ? [...place, index] : place;
      return checkBand(one, band, at, 'value', context);
    });
    const whole = wholeBands(measure, key as Quantifier, bands);
    if (bands.length > 0 && whole.length === 0) {
      const told = bandsOf(one).flatMap((band) => (measure.normal.includes(band) ? [] : [`any: ${band}`]));
      context.atKey(place, { code: 'members-untold', name: reading.id, told });
    }
    for (const band of whole) shown.add(band);
  }
  return [...shown].map((band) => ({ band, share: 1 / shown.size }));
}

/** The bands of the whole that are meant; of `any`, those in which nobody is in another band out of normal. */
function wholeBands(measure: Each, quantifier: Quantifier, bands: readonly string[]): readonly string[] {
  const together = bandsWhere(measure, quantifier, bands);
  if (quantifier === 'any') return (together ?? []).filter((band) => onlyOf(band, bands));
  return together ?? bands.flatMap((band) => bandsWhere(measure, quantifier, [band]) ?? []);
}

const onlyOf = (whole: string, bands: readonly string[]): boolean =>
  whole.includes('+')
    ? whole.split('+').every((band) => bands.includes(band))
    : bands.some((band) => ['one', 'several', 'all'].some((count) => whole === `${count}-${band}`));
