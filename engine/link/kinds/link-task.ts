import { fillInlines } from '../fill-values.ts';
import { resolveOnlyIf } from '../resolve-only-if.ts';
import { resolveSets } from '../resolve-sets.ts';
import { resolveTarget } from '../resolve-target.ts';
import type { LinkKind } from './link-kind.ts';

export const linkTask: LinkKind<'task'> = ({ syntax, base, from, values, context }) => {
  const target = syntax.target && resolveTarget(syntax.target, from, context);
  if (target === null) context.open.add('ways');
  return {
    section: {
      ...base,
      kind: 'task',
      task: fillInlines(syntax.task, values),
      sets: resolveSets(syntax.sets, from, context),
      onlyIf: resolveOnlyIf(syntax.onlyIf, from, context),
      minutes: syntax.minutes ?? context.facts.minutes,
      wait: syntax.wait,
      target: target ?? base.id,
    },
    sound: target !== null,
  };
};
