import type { Outcome } from '../../model/section.ts';
import type { Span } from '../../model/span.ts';
import type { OutcomeSyntax } from '../../read/section-syntax.ts';
import { type LinkContext, report } from '../link-context.ts';
import { linkOutcome } from '../link-outcome.ts';
import { placeIn } from '../place-in.ts';
import { resolveNames } from '../resolve-names.ts';
import type { LinkKind } from './link-kind.ts';

export const linkCheck: LinkKind<'check'> = ({ syntax, base, from, values, context }) => {
  const readings = resolveNames(syntax.readings, context.readings, 'no-reading-named', from, context);
  const names = [...new Set(syntax.readings.map(({ name }) => name))];
  checkCannotRead(syntax.outcomes, from, context);
  const outcomes: Outcome[] = [];
  const outcomeSpans: Span[] = [];
  for (const each of syntax.outcomes) {
    const outcome = linkOutcome(each, { names, readings }, from, values, context);
    if (outcome === null) continue;
    outcomes.push(outcome);
    outcomeSpans.push(placeIn(from, each.span));
  }
  const sound =
    outcomes.length === syntax.outcomes.length && outcomes.length > 0 && readings.length === names.length;
  if (!sound) context.open.add('ways');
  return {
    section: { ...base, kind: 'check', readings: readings.map(({ id }) => id), outcomes },
    sound,
    outcomeSpans,
  };
};

function checkCannotRead(outcomes: readonly OutcomeSyntax[], from: number, context: LinkContext): void {
  const [first, second] = outcomes.filter(({ condition }) => condition?.kind === 'unread');
  if (first === undefined || second === undefined) return;
  const related = placeIn(from, first.span);
  report(context, { code: 'cannot-read-twice' }, placeIn(from, second.span), { related });
}
