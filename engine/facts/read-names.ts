import type { NameKind } from '../diagnostics/front-matter-facts.ts';
import type { Path } from '../model/front-matter.ts';
import { checkName } from './check-name.ts';
import type { FactsContext } from './facts-context.ts';
import { textsOf } from './raw.ts';

/** A list of names, each once. */
export function readNames(raw: unknown, of: NameKind, path: Path, context: FactsContext): readonly string[] {
  const names = new Set<string>();
  for (const [index, name] of textsOf(raw).entries()) {
    const place = [...path, index];
    if (names.has(name)) context.atValue(place, { code: 'listed-twice', name, key: String(path.at(-1)) });
    else checkName(name, of, place, 'value', context);
    names.add(name);
  }
  return [...names];
}
