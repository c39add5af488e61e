import { describe } from '../diagnostics/describe.ts';
import type { Span } from '../model/span.ts';
import type { Placed } from '../read/body-syntax.ts';
import type { SectionSyntax } from '../read/section-syntax.ts';
import { checkScale } from '../scale/index.ts';
import type { KeptLinks } from './kept-links.ts';
import { type LinkContext, report, type Within } from './link-context.ts';
import { linkHere } from './link-here.ts';
import { linkSection } from './link-section.ts';
import type { LinkedSection } from './linked-tree.ts';
import { instanceReadings } from './procedures/instance-readings.ts';
import { instantiateSection } from './procedures/instantiate-section.ts';

/** The sections of a file with their names resolved, and after each call the sections of its procedure. Those whose
 *  kind is unknown are left out. */
export function linkSections(
  sections: readonly Placed<SectionSyntax>[],
  context: LinkContext,
  kept: KeptLinks | null = null,
): readonly LinkedSection[] {
  return sections.flatMap((section) => {
    if (section.syntax.kind !== 'call') return linkHere(section, context, kept) ?? [];
    const made = linkSection(section, context);
    if (made === null) return [];
    const { inside, ...linked } = made;
    const within = inside?.within ? putIn(inside, inside.within, linked.leadSpan, context) : [];
    return [linked, ...within];
  });
}

/** The sections of the procedure, at the place of the Follow line. What keeps a procedure that is sound by itself from
 *  working with these arguments is told once. */
function putIn(
  inside: LinkContext,
  { instance }: Within,
  span: Span,
  caller: LinkContext,
): readonly LinkedSection[] {
  const linked: LinkedSection[] = [];
  let misfit = readingMisfit(inside);
  for (const { syntax, from } of instance.procedure.body.sections) {
    if (syntax.kind === 'end') continue;
    linked.push(...linkSections([{ from, syntax: instantiateSection(syntax, instance.names) }], inside));
    const says = errorAmong(inside);
    if (says !== null) misfit ??= { where: syntax.title, says };
  }
  if (misfit !== null) {
    const { title } = instance.procedure.facts;
    report(caller, { code: 'call-does-not-fit', procedure: title, ...misfit }, span);
  }
  return linked.map((each) => {
    const outcomeSpans = each.outcomeSpans.map(() => span);
    return { ...each, inlined: true, risks: [], titleSpan: span, leadSpan: span, outcomeSpans };
  });
}

function errorAmong({ diagnostics }: LinkContext): string | null {
  const error = diagnostics.map(describe).find(({ severity }) => severity === 'error');
  return error?.wrong ?? null;
}

/** A limit that was in order with the procedure's own values need not be with these. */
function readingMisfit({
  facts,
  within,
}: LinkContext): { readonly where: string; readonly says: string } | null {
  for (const { id, measure } of within ? instanceReadings(within.instance) : []) {
    if (measure.kind !== 'quantity') continue;
    const [problem] = checkScale(measure.scale, measure.unit, facts.settings);
    if (problem !== undefined) return { where: id, says: describe(problem).wrong };
  }
  return null;
}
