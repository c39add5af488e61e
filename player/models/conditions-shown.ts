import type { Session } from '../../engine/run/index.ts';
import type { ConditionShown } from '../parts/condition-strip.tsx';
import { conditionName } from './condition-name.ts';

/** The conditions of the board that matter at a step: those it asks for or brings about, and those in which the board is
 *  not as it came.
 *  @param wanted by condition: `{ cards: 'out' }` */
export function conditionsShown(
  { loaded, position }: Session,
  wanted: Readonly<Record<string, string>>,
): readonly ConditionShown[] {
  return loaded.tree.conditions.flatMap(({ id, values }) => {
    const came = values[0] ?? '';
    const now = position.conditions[id] ?? came;
    const is = wanted[id] ?? now;
    if (wanted[id] === undefined && now === came) return [];
    return [{ name: conditionName(id), is, changed: is !== now }];
  });
}
