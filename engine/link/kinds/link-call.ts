import type { CallSection, Outcome } from '../../model/section.ts';
import type { CallSyntax } from '../../read/section-syntax.ts';
import { fillProse } from '../fill-prose.ts';
import { leaveOpen } from '../leave-open.ts';
import { type LinkContext, report } from '../link-context.ts';
import { linkOutcome } from '../link-outcome.ts';
import { placeIn } from '../place-in.ts';
import { checkArguments } from '../procedures/check-arguments.ts';
import { insideCall } from '../procedures/inside-call.ts';
import type { Instance } from '../procedures/instance.ts';
import { callReading } from '../procedures/instance-readings.ts';
import { resolveTarget } from '../resolve-target.ts';
import { resolveValues } from '../resolve-values.ts';
import type { LinkKind } from './link-kind.ts';

/** A procedure is followed: the calling section itself, and after it the procedure's sections as this call has them. */
export const linkCall: LinkKind<'call'> = ({ syntax, base, from, values, context }) => {
  const instance = context.calls.get(syntax.id);
  if (instance === undefined) {
    for (const { link } of syntax.outcomes) if (link) resolveTarget(link, from, context);
    return leaveOpen(context);
  }
  const fits = context.within !== null || checkArguments(syntax, instance, from, context);
  const reading = callReading(instance);
  const names = { names: [instance.id], readings: [reading] };
  const outcomes = syntax.outcomes.map((each) => linkOutcome(each, names, from, values, context));
  const sound =
    outcomes.every((each) => each !== null) && endsOnly(syntax, outcomes, instance, from, context);
  const ends = sound ? endsOf(syntax, outcomes as readonly Outcome[], instance, from, context) : null;
  if (!fits || ends === null) return leaveOpen(context);
  const { body, facts, id: procedure } = instance.procedure;
  const inside = insideCall(instance, new Map(ends.map(({ end, target }) => [end, target])), context);
  const head = fillProse(body.head.syntax, resolveValues(body.head.syntax.mentions, body.head.from, inside));
  const section: CallSection = {
    ...base,
    hazards: [...base.hazards, ...head.hazards],
    blocks: [...base.blocks, ...head.blocks],
    kind: 'call',
    procedure,
    procedureTitle: facts.title,
    given: facts.takes.flatMap(({ id, is }) => {
      const value = instance.given.get(id);
      return value === undefined ? [] : [{ name: id, is, value }];
    }),
    first: inside.sections.get(body.sections[0]?.syntax.id ?? '') ?? base.id,
    ends,
  };
  return { section, sound: true, inside };
};

/** Only its ends come back from a procedure. */
function endsOnly(
  syntax: CallSyntax,
  outcomes: readonly (Outcome | null)[],
  { id, procedure }: Instance,
  from: number,
  context: LinkContext,
): boolean {
  const others = outcomes.map((outcome) =>
    outcome?.condition.kind === 'bands'
      ? Object.keys(outcome.condition.bands).find((name) => name !== id)
      : undefined,
  );
  for (const [index, name] of others.entries()) {
    const span = syntax.outcomes[index]?.span;
    if (name === undefined || span === undefined) continue;
    const ends = procedure.facts.ends.map((end) => end.id);
    report(context, { code: 'ends-only', name, ends }, placeIn(from, span));
  }
  return others.every((name) => name === undefined);
}

/** Where each end leads: the first line that takes it. Null where some end leads nowhere. */
function endsOf(
  syntax: CallSyntax,
  outcomes: readonly Outcome[],
  { id, procedure }: Instance,
  from: number,
  context: LinkContext,
): CallSection['ends'] | null {
  const taken = procedure.facts.ends.map((end) => ({
    end: end.id,
    line: outcomes.findIndex(({ condition }) =>
      condition.kind === 'bands' ? condition.bands[id]?.includes(end.id) : condition.kind === 'otherwise',
    ),
  }));
  const lost = taken.filter(({ line }) => line < 0).map(({ end }) => end);
  if (lost.length > 0 && outcomes.length > 0) {
    const { title } = procedure.facts;
    report(context, { code: 'end-not-taken', procedure: title, ends: lost }, placeIn(from, syntax.leadSpan));
  }
  for (const [index, { span, written }] of syntax.outcomes.entries()) {
    if (outcomes[index]?.condition.kind !== 'unread' && !taken.some(({ line }) => line === index))
      report(context, { code: 'outcome-never-matches', written }, placeIn(from, span));
  }
  if (lost.length > 0) return null;
  return taken.flatMap(({ end, line }) => {
    const outcome = outcomes[line];
    return outcome ? [{ end, target: outcome.target, remark: outcome.remark }] : [];
  });
}
