import type { BoardFacts } from '../../diagnostics/board-facts.ts';
import type { FactsContext } from '../../facts/facts-context.ts';
import { isTable, listOf, type RawTable, tableOf, textOf } from '../../facts/raw.ts';
import type { Jumper } from '../../model/compiled-board.ts';
import type { Path } from '../../model/front-matter.ts';

/** What is set by hand on this board. */
export function readJumpers(data: RawTable, context: FactsContext): readonly Jumper[] {
  const table = tableOf(data.jumpers);
  return context.keysOf(['jumpers'], table).flatMap((id): readonly Jumper[] => {
    const raw = table[id];
    const path = ['jumpers', id];
    if (!checkWord(id, 'jumper', path, 'key', context) || !isTable(raw)) return [];
    const positions = readWords(raw.positions, 'position', [...path, 'positions'], context);
    return positions.length === 0 ? [] : [{ id, is: textOf(raw.is) ?? id, positions }];
  });
}

type Named = Extract<BoardFacts, { readonly code: 'jumper-name' }>['of'];

/** A list of single words, each once. */
export function readWords(raw: unknown, of: Named, path: Path, context: FactsContext): readonly string[] {
  const words: string[] = [];
  for (const [index, item] of listOf(raw).entries()) {
    const name = textOf(item);
    const place = [...path, index];
    if (name === null || !checkWord(name, of, place, 'value', context)) continue;
    if (words.includes(name))
      context.atValue(place, { code: 'listed-twice', name, key: String(path.at(-1)) });
    else words.push(name);
  }
  return words;
}

/** One word that positions can be taken apart by; `and` stands between them. */
function checkWord(
  name: string,
  of: Named,
  path: Path,
  part: 'key' | 'value',
  context: FactsContext,
): boolean {
  if (/^[\p{L}\p{N}][\p{L}\p{N}._-]{0,23}$/u.test(name) && !/^and$/i.test(name) && !(name in {})) return true;
  context.at(context.spanOf(path, part), { code: 'jumper-name', of, name });
  return false;
}
