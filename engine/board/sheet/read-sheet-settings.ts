import type { FactsContext } from '../../facts/facts-context.ts';
import { type RawTable, tableOf, textOf } from '../../facts/raw.ts';
import type { Setting, SettingValue } from '../../model/setting.ts';
import { checkSharedName } from './check-shared-name.ts';
import { readSettingValue } from './read-setting-value.ts';

/** What settings are on this board unless somebody changed them. */
export function readSheetSettings(
  data: RawTable,
  shared: readonly Setting[],
  context: FactsContext,
): Readonly<Record<string, SettingValue>> {
  const table = tableOf(data.settings);
  const values = context.keysOf(['settings'], table).flatMap((id) => {
    const path = ['settings', id];
    checkSharedName(id, 'setting', shared, path, context);
    const text = textOf(table[id]);
    const setting = shared.find((each) => each.id === id);
    const value = text === null ? null : readSettingValue(text, setting, path, context);
    return value === null ? [] : [[id, value] as const];
  });
  return Object.fromEntries(values);
}
