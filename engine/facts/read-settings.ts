import type { ForeignFacts } from '../model/foreign-facts.ts';
import type { Path } from '../model/front-matter.ts';
import type { Setting } from '../model/setting.ts';
import { checkName } from './check-name.ts';
import type { FactsContext } from './facts-context.ts';
import { joinDeclared } from './join-declared.ts';
import { isTable, type RawTable, tableOf, textOf } from './raw.ts';
import { readOptions } from './read-options.ts';
import { readSettingValue } from './read-setting-value.ts';
import { readUnit } from './read-unit.ts';

export interface ReadSettings {
  readonly settings: readonly Setting[];
  /** Settings that are not what the author meant: what depends on them is not judged. */
  readonly broken: ReadonlySet<string>;
}

/** @param foreign settings and readings that are known from other files */
export function readSettings(
  data: RawTable,
  foreign: Pick<ForeignFacts, 'settings' | 'readings'>,
  context: FactsContext,
): ReadSettings {
  const readings = new Set(foreign.readings.map(({ id }) => id));
  const broken = new Set<string>();
  const table = tableOf(data.settings);
  const own = context.keysOf(['settings'], table).flatMap((id): readonly Setting[] => {
    const path = ['settings', id];
    const raw = table[id];
    if (!checkName(id, 'setting', path, 'key', context)) broken.add(id);
    if (readings.has(id)) {
      context.atKey(path, { code: 'name-clash', name: id, of: 'setting', other: 'reading', elsewhere: true });
    }
    if (!isTable(raw)) return [];
    const before = context.diagnostics.length;
    const setting = readSetting(id, raw, path, context);
    if (context.diagnostics.length > before) broken.add(id);
    return [setting];
  });
  return { settings: joinDeclared(foreign.settings, own, 'setting', context), broken };
}

function readSetting(id: string, raw: RawTable, path: Path, context: FactsContext): Setting {
  const is = textOf(raw.is) ?? id;
  const found = ['unit', 'options'].filter((key) => key in raw);
  if (found.length !== 1) context.atKey(path, { code: 'one-measure', of: 'setting', found });
  const usual = textOf(raw.usual);
  if ('options' in raw) {
    const options = readOptions(raw.options, [...path, 'options'], context);
    const setting: Setting = { kind: 'options', id, is, options, usual: null };
    const value = usual && readSettingValue(usual, setting, [...path, 'usual'], context);
    return typeof value === 'string' ? { ...setting, usual: value } : setting;
  }
  const unit = readUnit(raw, path, context);
  const setting: Setting = { kind: 'quantity', id, is, unit: unit ?? '', usual: null };
  if (usual === null || unit === null) return setting;
  const value = readSettingValue(usual, setting, [...path, 'usual'], context);
  return value === null || typeof value === 'string' ? setting : { ...setting, usual: value };
}
