import type { ProcedureEnd } from '../model/procedure-facts.ts';
import { checkName } from './check-name.ts';
import type { FactsContext } from './facts-context.ts';
import { isTable, type RawTable, textOf } from './raw.ts';
import { readNames } from './read-names.ts';

/** The ways out of a procedure: `{ found: the part is known }`, or a list of names. */
export function readEnds(data: RawTable, context: FactsContext): readonly ProcedureEnd[] {
  const { ends } = data;
  const path = ['ends'];
  if (!isTable(ends)) return readNames(ends, 'end', path, context).map((id) => ({ id, means: null }));
  return context.keysOf(path, ends).map((id) => {
    checkName(id, 'end', [...path, id], 'key', context);
    return { id, means: textOf(ends[id]) };
  });
}
