import type { ConditionPair } from '../read/section-syntax.ts';
import { type LinkContext, only, report } from './link-context.ts';
import { placeIn } from './place-in.ts';

/** The conditions that a task brings the board into; those that are not declared are reported and left out. */
export function resolveSets(
  pairs: readonly ConditionPair[],
  from: number,
  context: LinkContext,
): Readonly<Record<string, string>> {
  const declared = new Map(context.facts.conditions.map(({ id, values }) => [id, values]));
  const sets = pairs.filter(({ condition, value }) => {
    const values = declared.get(condition.name);
    if (values?.includes(value.name)) return true;
    if (values === undefined) {
      const span = placeIn(from, condition);
      const near = context.near(condition.name, declared.keys());
      report(context, { code: 'no-condition-named', name: condition.name, near }, span, {
        fix: only(near, span),
      });
      return false;
    }
    const span = placeIn(from, value);
    const near = context.near(value.name, values);
    const facts = { code: 'no-value-named', name: condition.name, value: value.name, values, near } as const;
    report(context, facts, span, { fix: only(near, span) });
    return false;
  });
  return Object.fromEntries(sets.map(({ condition, value }) => [condition.name, value.name]));
}
