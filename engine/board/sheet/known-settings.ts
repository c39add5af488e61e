import type { JumperTable } from '../../model/compiled-board.ts';
import type { Setting, SettingValue } from '../../model/setting.ts';
import { sameValue } from '../same-value.ts';

/** A setting that limits may name, and every value that is known of it: usual ones and those of the jumper table. */
export interface KnownSetting {
  readonly setting: Setting;
  readonly values: readonly SettingValue[];
}

/** What shared files declare and what the sheet itself gives a value. A setting that only the sheet speaks of is
 *  whatever its first value is. */
export function knownSettings(
  shared: readonly Setting[],
  usual: Readonly<Record<string, SettingValue>>,
  tables: readonly JumperTable[],
): readonly KnownSetting[] {
  const declared = new Map(shared.map((setting) => [setting.id, setting]));
  const named = new Set([...declared.keys(), ...Object.keys(usual), ...tables.map(({ setting }) => setting)]);
  return [...named].flatMap((id): readonly KnownSetting[] => {
    const own = Object.hasOwn(usual, id) ? usual[id] : undefined;
    const values = distinct([
      ...[own, declared.get(id)?.usual ?? undefined].filter((value) => value !== undefined),
      ...tables.flatMap((table) => (table.setting === id ? table.rows.map(({ value }) => value) : [])),
    ]);
    const setting = declared.get(id) ?? settingOf(id, values);
    return setting === null ? [] : [{ setting, values }];
  });
}

function settingOf(id: string, values: readonly SettingValue[]): Setting | null {
  const [first] = values;
  if (first === undefined) return null;
  if (typeof first !== 'string') return { kind: 'quantity', id, is: id, unit: first.unit, usual: first };
  const names = values.filter((value) => typeof value === 'string');
  return { kind: 'options', id, is: id, options: names.map((name) => ({ name, means: null })), usual: first };
}

const distinct = (values: readonly SettingValue[]): readonly SettingValue[] =>
  values.filter((value, index) => values.findIndex((other) => sameValue(other, value)) === index);
