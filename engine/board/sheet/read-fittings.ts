import type { FactsContext } from '../../facts/facts-context.ts';
import { isTable, listOf, type RawTable, tableOf, textOf } from '../../facts/raw.ts';
import type { Fitting } from '../../model/compiled-board.ts';
import { nearest } from '../../names/nearest.ts';
import { readWords } from './read-jumpers.ts';

/** Which sockets may be filled together. */
export function readFittings(data: RawTable, context: FactsContext): readonly Fitting[] {
  const table = tableOf(data.fitting);
  return context.keysOf(['fitting'], table).flatMap((id): readonly Fitting[] => {
    const raw = table[id];
    const path = ['fitting', id];
    if (!isTable(raw)) return [];
    const sockets = readWords(raw.sockets, 'socket', [...path, 'sockets'], context);
    const together = listOf(raw.together).map((group, index) => {
      const place = [...path, 'together', index];
      return listOf(group).flatMap((item, at) => {
        const name = textOf(item);
        if (name === null || sockets.includes(name)) return name ?? [];
        const near = nearest(name.slice(0, 60), sockets);
        context.atValue([...place, at], { code: 'no-socket-named', name, near });
        return [];
      });
    });
    return [{ id, is: textOf(raw.is) ?? id, sockets, together: together.filter(({ length }) => length > 0) }];
  });
}
