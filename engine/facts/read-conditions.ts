import type { BoardCondition } from '../model/compiled-tree.ts';
import { checkName } from './check-name.ts';
import type { FactsContext } from './facts-context.ts';
import { joinDeclared } from './join-declared.ts';
import { type RawTable, tableOf } from './raw.ts';
import { readNames } from './read-names.ts';

/** What the board can be in: `{ cards: [in, out] }`. */
export function readConditions(
  data: RawTable,
  foreign: readonly BoardCondition[],
  context: FactsContext,
): readonly BoardCondition[] {
  const table = tableOf(data.conditions);
  const own = context.keysOf(['conditions'], table).map((id): BoardCondition => {
    const path = ['conditions', id];
    checkName(id, 'condition', path, 'key', context);
    return { id, values: readNames(table[id], 'condition value', path, context) };
  });
  return joinDeclared(foreign, own, 'condition', context);
}
