import type { Path } from '../model/front-matter.ts';
import type { Setting } from '../model/setting.ts';
import { nearest } from '../names/nearest.ts';
import { readWritten } from '../quantity/index.ts';
import { checkName } from './check-name.ts';
import type { FactsContext } from './facts-context.ts';
import { isTable, type RawTable, tableOf, textOf } from './raw.ts';
import { readOptions } from './read-options.ts';
import { readUnit } from './read-unit.ts';
import { textProblems } from './text-problems.ts';

export interface ReadSettings {
  readonly settings: readonly Setting[];
  /** Settings that are not what the author meant: what depends on them is not judged. */
  readonly broken: ReadonlySet<string>;
}

export function readSettings(data: RawTable, context: FactsContext): ReadSettings {
  const broken = new Set<string>();
  const table = tableOf(data.settings);
  const settings = context.keysOf(['settings'], table).flatMap((id): readonly Setting[] => {
    const path = ['settings', id];
    const raw = table[id];
    if (!checkName(id, 'setting', path, 'key', context)) broken.add(id);
    if (!isTable(raw)) return [];
    const before = context.diagnostics.length;
    const setting = readSetting(id, raw, path, context);
    if (context.diagnostics.length > before) broken.add(id);
    return [setting];
  });
  return { settings, broken };
}

function readSetting(id: string, raw: RawTable, path: Path, context: FactsContext): Setting {
  const is = textOf(raw.is) ?? id;
  const found = ['unit', 'options'].filter((key) => key in raw);
  if (found.length !== 1) context.atKey(path, { code: 'one-measure', of: 'setting', found });
  const usual = textOf(raw.usual);
  if ('options' in raw) {
    const options = readOptions(raw.options, [...path, 'options'], context);
    const names = options.map(({ name }) => name);
    if (usual !== null && !names.includes(usual)) {
      const near = nearest(usual.slice(0, 60), names);
      context.atValue([...path, 'usual'], {
        code: 'word-wanted',
        key: 'usual',
        text: usual,
        words: names,
        near,
      });
    }
    return {
      kind: 'options',
      id,
      is,
      options,
      usual: usual !== null && names.includes(usual) ? usual : null,
    };
  }
  const unit = readUnit(raw, path, context);
  if (usual === null || unit === null) return { kind: 'quantity', id, is, unit: unit ?? '', usual: null };
  const quantity = readWritten(usual, unit);
  if (!quantity.ok) textProblems(usual, [...path, 'usual'], 'value', quantity.problems, context);
  return { kind: 'quantity', id, is, unit, usual: quantity.ok ? quantity.value : null };
}
