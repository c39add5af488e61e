import type { FactsContext } from '../../facts/facts-context.ts';
import { isTable, listOf, type RawTable, tableOf, textOf } from '../../facts/raw.ts';
import { textProblems } from '../../facts/text-problems.ts';
import type { Reference } from '../../model/compiled-board.ts';
import type { Path } from '../../model/front-matter.ts';
import type { Measure, Reading } from '../../model/reading.ts';
import { readWritten } from '../../quantity/index.ts';
import { checkSharedName } from './check-shared-name.ts';
import { isDay } from './is-day.ts';

/** What was read on a known-good board.
 *  @param measures of readings that no shared file declares, where the sheet itself says how they are cut */
export function readReferences(
  data: RawTable,
  shared: readonly Reading[],
  measures: ReadonlyMap<string, Measure>,
  context: FactsContext,
): readonly Reference[] {
  return listOf(data.references).flatMap((raw, index): readonly Reference[] => {
    if (!isTable(raw)) return [];
    const path = ['references', index];
    const date = textOf(raw.date);
    if (date !== null && !isDay(date))
      context.atValue([...path, 'date'], { code: 'reference-day', text: date });
    const instrument = textOf(raw.instrument);
    const table = tableOf(raw.readings);
    return context.keysOf([...path, 'readings'], table).flatMap((reading): readonly Reference[] => {
      const place = [...path, 'readings', reading];
      checkSharedName(reading, 'reading', shared, place, context);
      const measure = shared.find(({ id }) => id === reading)?.measure ?? measures.get(reading);
      const value = readValue(textOf(table[reading]), reading, measure, place, context);
      if (value === null || date === null || !isDay(date) || instrument === null) return [];
      return [{ reading, value, date, instrument }];
    });
  });
}

function readValue(
  text: string | null,
  reading: string,
  measure: Measure | undefined,
  path: Path,
  context: FactsContext,
) {
  if (text === null) return null;
  if (measure !== undefined && measure.kind !== 'quantity') {
    context.atKey(path, { code: 'reference-quantity', reading });
    return null;
  }
  const quantity = readWritten(text, measure?.unit ?? null);
  if (!quantity.ok) textProblems(text, path, 'value', quantity.problems, context);
  return quantity.ok ? quantity.value : null;
}
