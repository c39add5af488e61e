import type { Staged } from '../diagnostics/staged.ts';
import type { ForeignFacts } from '../model/foreign-facts.ts';
import type { TreeFacts } from '../model/tree-facts.ts';
import type { BodySyntax } from '../read/body-syntax.ts';
import { alone, type Beside } from './beside.ts';
import { checkFileKind } from './check-file-kind.ts';
import { fillProse } from './fill-prose.ts';
import type { KeptLinks } from './kept-links.ts';
import { type LinkContext, linkContext, report } from './link-context.ts';
import { linkSections } from './link-sections.ts';
import type { LinkedSection, LinkedTree, PlaceOf } from './linked-tree.ts';
import { placeIn } from './place-in.ts';
import { resolveTarget } from './resolve-target.ts';
import { resolveValues } from './resolve-values.ts';
import { usedFacts } from './used-facts.ts';

/** Leads every name of the body to the thing it names, and puts the procedures that it follows in their places. Unknown
 *  names are reported with those that may have been meant; what comes out is the best that can be made of the file.
 *  @param kept what was made of its sections before */
export function linkTree(
  facts: TreeFacts,
  placeOf: PlaceOf,
  { head, sections }: BodySyntax,
  beside: Beside = alone,
  kept: KeptLinks | null = null,
): Staged<LinkedTree> {
  const slugs = sections.map(({ syntax }) => syntax.id).filter((id) => id !== '');
  const context = linkContext(facts, new Map(slugs.map((slug) => [slug, slug])), beside);
  kept?.begin(facts, slugs, beside);
  if (sections.length === 0 && beside.kind !== 'shared') noSections(head, context);
  checkTitle(head, context);
  checkSlugs(sections, context);
  checkFileKind(sections, beside.kind, context);
  const values = resolveValues(head.syntax.mentions, head.from, context);
  for (const link of head.syntax.mentions.links)
    if (link.file === null) resolveTarget(link, head.from, context);
  const linked = [...linkSections(sections, context, kept), ...handOvers(context)];
  const value: LinkedTree = {
    facts: usedFacts(facts, linked, context.settingsUsed, beside),
    placeOf,
    ...fillProse(head.syntax, values),
    sections: linked,
    open: context.open,
    settingsUsed: context.settingsUsed,
    foreign: namesOf(beside.foreign),
  };
  return { value, diagnostics: context.diagnostics };
}

/** The sections in which the job goes on elsewhere stand last, at the place of the link that first led there. */
const handOvers = (context: LinkContext): readonly LinkedSection[] =>
  [...context.handOvers.values()].map(({ section, span }) => ({
    section,
    titleSpan: span,
    leadSpan: span,
    outcomeSpans: [],
    faultSpans: [],
    risks: [],
    sound: true,
  }));

const namesOf = ({ conditions, settings, readings, faults, ones = [] }: ForeignFacts): ReadonlySet<string> =>
  new Set([...[...conditions, ...settings, ...readings, ...faults].map(({ id }) => id), ...ones]);

function noSections({ from }: BodySyntax['head'], context: LinkContext): void {
  context.diagnostics.push({ code: 'no-sections', span: { from, to: from } });
  for (const aspect of ['ways', 'faults', 'readings'] as const) context.open.add(aspect);
}

function checkTitle({ syntax, from }: BodySyntax['head'], context: LinkContext): void {
  const { title } = context.facts;
  if (syntax.title === null || title === '' || syntax.title.text === title) return;
  report(
    context,
    { code: 'title-differs', title, heading: syntax.title.text },
    placeIn(from, syntax.title.span),
  );
}

/** Two sections with one address: a link could only ever lead to the first. */
function checkSlugs(sections: BodySyntax['sections'], context: LinkContext): void {
  const first = new Map<string, BodySyntax['sections'][number]>();
  for (const section of sections) {
    const { id, titleSpan } = section.syntax;
    const earlier = first.get(id);
    if (id === '') continue;
    if (earlier === undefined) first.set(id, section);
    else {
      const related = placeIn(earlier.from, earlier.syntax.titleSpan);
      const facts = { code: 'equal-slugs', slug: id, title: earlier.syntax.title } as const;
      report(context, facts, placeIn(section.from, titleSpan), { related });
    }
  }
}
