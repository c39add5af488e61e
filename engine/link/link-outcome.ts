import type { Outcome } from '../model/section.ts';
import type { OutcomeSyntax } from '../read/section-syntax.ts';
import { fillInlines } from './fill-values.ts';
import type { LinkContext } from './link-context.ts';
import { type CheckNames, resolveCondition } from './resolve-condition.ts';
import { resolveTarget } from './resolve-target.ts';
import type { Values } from './resolve-values.ts';

/** A line of a check or a call with its names and its target; null where either is unknown. */
export function linkOutcome(
  syntax: OutcomeSyntax,
  check: CheckNames,
  from: number,
  values: Values,
  context: LinkContext,
): Outcome | null {
  const target = syntax.link && resolveTarget(syntax.link, from, context);
  const condition =
    syntax.condition && resolveCondition(syntax.condition, check, from + syntax.span.from, context);
  if (target === null || condition === null) return null;
  return { condition, written: syntax.written, target, remark: fillInlines(syntax.remark, values) };
}
