import type { FactsContext } from '../../facts/facts-context.ts';
import { isTable, type RawTable, tableOf, textOf } from '../../facts/raw.ts';
import { readMeanings } from '../../facts/read-meanings.ts';
import type { BoardReading } from '../../model/compiled-board.ts';
import type { Path } from '../../model/front-matter.ts';
import type { Measure, Reading, SingleMeasure } from '../../model/reading.ts';
import { checkSharedName } from './check-shared-name.ts';
import type { KnownSetting } from './known-settings.ts';
import { readOtherScale } from './read-other-scale.ts';

const keys = ['expect', 'scale', 'codes', 'beeps'] as const;

/** How this board reads where it differs: the same bands, other limits. */
export function readSheetReadings(
  data: RawTable,
  shared: readonly Reading[],
  settings: readonly KnownSetting[],
  context: FactsContext,
): readonly BoardReading[] {
  const table = tableOf(data.readings);
  return context.keysOf(['readings'], table).flatMap((reading): readonly BoardReading[] => {
    const raw = table[reading];
    const path = ['readings', reading];
    checkSharedName(reading, 'reading', shared, path, context);
    if (!isTable(raw)) return [];
    if (!('source' in raw)) context.atKey(path, { code: 'missing-source', reading });
    const own = shared.find(({ id }) => id === reading)?.measure;
    const measure = readOther(raw, reading, own, settings, path, context);
    return measure === null ? [] : [{ reading, measure, source: textOf(raw.source) }];
  });
}

/** @param own as the shared file declares the reading; undefined where none does */
function readOther(
  raw: RawTable,
  reading: string,
  own: Measure | undefined,
  settings: readonly KnownSetting[],
  path: Path,
  context: FactsContext,
): SingleMeasure | null {
  const found = keys.filter((key) => key in raw);
  const [key] = found;
  if (key === undefined || found.length > 1) {
    context.atKey(path, { code: 'sheet-limits', reading, found });
    return null;
  }
  const one = own?.kind === 'each' ? own.of : own;
  const wanted = kinds[key];
  if (one !== undefined && one.kind !== wanted) {
    context.atKey([...path, key], { code: 'sheet-measure-differs', reading, wanted: words[one.kind] });
    return null;
  }
  const measure =
    key === 'codes' || key === 'beeps'
      ? readMeanings(raw[key], key, [...path, key], context)
      : readOtherScale(raw, key, one?.kind === 'quantity' ? one : null, settings, path, context);
  if (measure === null || one === undefined) return measure;
  return withBandsOf(one, measure, reading, [...path, key], context);
}

const kinds = { expect: 'quantity', scale: 'quantity', codes: 'codes', beeps: 'beeps' } as const;

const words: Readonly<Record<Exclude<Measure['kind'], 'each'>, string>> = {
  quantity: 'a unit',
  options: 'options',
  codes: 'codes',
  beeps: 'beeps',
  tries: 'tries',
};

/** A table of codes need not use every band; limits do, and in the same order. */
function withBandsOf(
  own: SingleMeasure | Extract<Measure, { kind: 'tries' }>,
  measure: SingleMeasure,
  reading: string,
  path: Path,
  context: FactsContext,
): SingleMeasure | null {
  const differ = (bands: readonly string[], expected: readonly string[]): null => {
    context.atKey(path, { code: 'sheet-bands-differ', reading, bands, expected });
    return null;
  };
  if (own.kind === 'quantity' && measure.kind === 'quantity') {
    const same = own.scale.bands.join() === measure.scale.bands.join();
    return same ? measure : differ(measure.scale.bands, own.scale.bands);
  }
  if ((own.kind !== 'codes' && own.kind !== 'beeps') || own.kind !== measure.kind) return measure;
  return measure.bands.every((band) => own.bands.includes(band))
    ? { ...measure, bands: own.bands }
    : differ(measure.bands, own.bands);
}
