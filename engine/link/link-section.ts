import type { Hazard } from '../model/prose.ts';
import type { CheckSection, FaultSection, Outcome, Section } from '../model/section.ts';
import type { Span } from '../model/span.ts';
import type { Placed } from '../read/body-syntax.ts';
import type {
  CheckSyntax,
  FaultSyntax,
  OutcomeSyntax,
  ProseSyntax,
  SectionSyntax,
} from '../read/section-syntax.ts';
import { fillBlocks, fillInlines } from './fill-values.ts';
import { type LinkContext, report } from './link-context.ts';
import type { LinkedSection } from './linked-tree.ts';
import { placeIn } from './place-in.ts';
import { type CheckNames, resolveCondition } from './resolve-condition.ts';
import { resolveNames } from './resolve-names.ts';
import { resolveOnlyIf } from './resolve-only-if.ts';
import { resolveSets } from './resolve-sets.ts';
import { resolveTarget } from './resolve-target.ts';
import { resolveTries } from './resolve-tries.ts';
import { resolveValues, type Values } from './resolve-values.ts';

/** What linking makes of one kind of section. */
interface Made {
  readonly section: Section;
  readonly sound: boolean;
  readonly outcomeSpans?: readonly Span[];
  readonly faultSpans?: readonly Span[];
}

interface Base {
  readonly id: string;
  readonly title: string;
  readonly hazards: readonly Hazard[];
  readonly blocks: Section['blocks'];
}

type Of<Kind> = Extract<SectionSyntax, { readonly kind: Kind }>;
type Link<Kind> = (
  syntax: Of<Kind>,
  base: Base,
  from: number,
  values: Values,
  context: LinkContext,
) => Made | null;

const links: { readonly [Kind in SectionSyntax['kind']]: Link<Kind> } = {
  check: linkCheck,
  task(syntax, base, from, values, context) {
    const target = syntax.target && resolveTarget(syntax.target, from, context);
    if (target === null) context.open.add('ways');
    const { wait } = syntax;
    const minutes = syntax.minutes ?? context.facts.minutes;
    const task = fillInlines(syntax.task, values);
    return {
      section: {
        ...base,
        kind: 'task',
        task,
        sets: resolveSets(syntax.sets, from, context),
        onlyIf: resolveOnlyIf(syntax.onlyIf, from, context),
        minutes,
        wait,
        target: target ?? base.id,
      },
      sound: target !== null,
    };
  },
  fault: linkFault,
  stop: (syntax, base, _from, values) => ({
    section: { ...base, kind: 'stop', reason: fillInlines(syntax.reason, values) },
    sound: true,
  }),
  call: leftOpen,
  end: leftOpen,
  unknown: leftOpen,
};

/** A section that nothing is made of here: rules would only complain of what is missing. */
function leftOpen(_syntax: unknown, _base: Base, _from: number, _values: Values, context: LinkContext): null {
  for (const aspect of ['ways', 'faults', 'readings'] as const) context.open.add(aspect);
  return null;
}

/** A section with its names resolved; null where its kind is unknown. */
export function linkSection(
  { syntax, from }: Placed<SectionSyntax>,
  context: LinkContext,
): LinkedSection | null {
  if (syntax.doubtful) context.open.add('ways');
  const values = resolveValues(syntax.mentions, from, context);
  for (const link of syntax.mentions.links) resolveTarget(link, from, context);
  const base = { id: syntax.id, title: syntax.title, ...filled(syntax, values) };
  const link = links[syntax.kind] as Link<SectionSyntax['kind']>;
  const made = link(syntax as never, base, from, values, context);
  return (
    made && {
      outcomeSpans: [],
      faultSpans: [],
      ...made,
      titleSpan: placeIn(from, syntax.titleSpan),
      leadSpan: placeIn(from, syntax.leadSpan),
    }
  );
}

const filled = ({ hazards, blocks }: ProseSyntax, values: Values): Pick<Base, 'hazards' | 'blocks'> => ({
  hazards:
    values.size === 0
      ? hazards
      : hazards.map((hazard) => ({ ...hazard, blocks: fillBlocks(hazard.blocks, values) })),
  blocks: fillBlocks(blocks, values),
});

function linkCheck(
  syntax: CheckSyntax,
  base: Base,
  from: number,
  values: Values,
  context: LinkContext,
): Made {
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
  const section: CheckSection = { ...base, kind: 'check', readings: readings.map(({ id }) => id), outcomes };
  return { section, sound, outcomeSpans };
}

function checkCannotRead(outcomes: readonly OutcomeSyntax[], from: number, context: LinkContext): void {
  const [first, second] = outcomes.filter(({ condition }) => condition?.kind === 'unread');
  if (first === undefined || second === undefined) return;
  const related = placeIn(from, first.span);
  report(context, { code: 'cannot-read-twice' }, placeIn(from, second.span), { related });
}

function linkOutcome(
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

function linkFault(
  syntax: FaultSyntax,
  base: Base,
  from: number,
  values: Values,
  context: LinkContext,
): Made {
  const faults = resolveNames(syntax.faults, context.faults, 'no-fault-named', from, context);
  const proof = resolveNames(syntax.proof, context.readings, 'no-reading-named', from, context).map(
    ({ id }) => id,
  );
  const remedies = faults.map(({ id }) => {
    const remedy = syntax.remedies.find(({ fault }) => fault === null || fault === id);
    return { fault: id, ...filled(remedy ?? { hazards: [], blocks: [] }, values) };
  });
  const faultSpans = faults.flatMap(({ id }) => {
    const named = syntax.faults.find(({ name }) => name === id);
    return named ? [placeIn(from, named)] : [];
  });
  const section: FaultSection = {
    ...base,
    kind: 'fault',
    onlyIf: resolveOnlyIf(syntax.onlyIf, from, context),
    remedies,
    proof,
    proofTries: resolveTries(syntax.proof, from, context),
  };
  return { section, sound: faults.length === syntax.faults.length, faultSpans };
}
