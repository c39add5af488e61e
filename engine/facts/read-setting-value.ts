import type { Path } from '../model/front-matter.ts';
import type { Setting, SettingValue } from '../model/setting.ts';
import { nearest } from '../names/nearest.ts';
import { readWritten } from '../quantity/index.ts';
import type { FactsContext } from './facts-context.ts';
import { textProblems } from './text-problems.ts';

/** A value of a setting as it is written; told and null where it is none. */
export function readSettingValue(
  text: string,
  setting: Setting,
  path: Path,
  context: FactsContext,
): SettingValue | null {
  if (setting.kind === 'options') {
    const words = setting.options.map(({ name }) => name);
    if (words.includes(text)) return text;
    const near = nearest(text.slice(0, 60), words);
    context.atValue(path, { code: 'word-wanted', key: String(path.at(-1)), text, words, near });
    return null;
  }
  const quantity = readWritten(text, setting.unit);
  if (quantity.ok) return quantity.value;
  textProblems(text, path, 'value', quantity.problems, context);
  return null;
}
