import type { FactsContext } from '../../facts/facts-context.ts';
import { textProblems } from '../../facts/text-problems.ts';
import type { Path } from '../../model/front-matter.ts';
import type { Setting, SettingValue } from '../../model/setting.ts';
import { nearest } from '../../names/nearest.ts';
import { readWritten } from '../../quantity/index.ts';

const optionName = /^[\p{L}_][\p{L}\p{N}_-]*$|^\d+-[\p{L}\p{N}_-]+$/u;

/** The value of a setting as a board sheet writes it, or null where it is none.
 *  @param setting undefined where no shared file declares it: a quantity then brings its unit, and a word is an option */
export function readSettingValue(
  text: string,
  setting: Setting | undefined,
  path: Path,
  context: FactsContext,
): SettingValue | null {
  if (setting?.kind === 'options') {
    const words = setting.options.map(({ name }) => name);
    if (words.includes(text)) return text;
    const near = nearest(text.slice(0, 60), words);
    context.atValue(path, { code: 'word-wanted', key: setting.id, text, words, near });
    return null;
  }
  const quantity = readWritten(text, setting?.unit ?? null);
  if (quantity.ok) return quantity.value;
  if (setting === undefined && text.length <= 60 && optionName.test(text)) return text;
  textProblems(text, path, 'value', quantity.problems, context);
  return null;
}
