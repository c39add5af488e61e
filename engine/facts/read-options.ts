import type { Path } from '../model/front-matter.ts';
import type { Option } from '../model/reading.ts';
import { checkName } from './check-name.ts';
import type { FactsContext } from './facts-context.ts';
import { isTable, textOf, textsOf } from './raw.ts';

/** A list of names, or a table of names and what they mean. */
export function readOptions(raw: unknown, path: Path, context: FactsContext): readonly Option[] {
  if (isTable(raw)) {
    return context.keysOf(path, raw).map((name) => {
      checkName(name, 'option', [...path, name], 'key', context);
      return { name, means: textOf(raw[name]) };
    });
  }
  const options: Option[] = [];
  for (const [index, name] of textsOf(raw).entries()) {
    const place = [...path, index];
    checkName(name, 'option', place, 'value', context);
    if (options.some((option) => option.name === name)) {
      context.atValue(place, { code: 'option-twice', option: name });
    } else options.push({ name, means: null });
  }
  return options;
}
