import type { Path } from '../model/front-matter.ts';
import type { Setting, SettingValue } from '../model/setting.ts';
import { nearest } from '../names/nearest.ts';
import type { FactsContext } from './facts-context.ts';
import { tableOf, textOf } from './raw.ts';
import { readSettingValue } from './read-setting-value.ts';
import type { ReadSettings } from './read-settings.ts';

/** Settings that a fault makes wrong: `{ bus: 50 MHz }`. */
export function readSets(
  raw: unknown,
  path: Path,
  { settings, broken }: ReadSettings,
  context: FactsContext,
): Readonly<Record<string, SettingValue>> {
  const table = tableOf(raw);
  const known = new Map(settings.map((setting): [string, Setting] => [setting.id, setting]));
  const values = context.keysOf(path, table).flatMap((name) => {
    const setting = known.get(name);
    const place = [...path, name];
    const text = textOf(table[name]);
    if (setting === undefined) {
      const near = nearest(name.slice(0, 60), known.keys());
      context.atKey(place, { code: 'unknown-name', name, near });
      return [];
    }
    if (text === null || broken.has(name)) return [];
    const value = readSettingValue(text, setting, place, context);
    return value === null ? [] : [[name, value] as const];
  });
  return Object.fromEntries(values);
}
