import type { Staged } from '../diagnostics/staged.ts';
import type { TreeFacts } from '../model/tree-facts.ts';
import type { BodySyntax } from '../read/body-syntax.ts';
import { checkFileKind } from './check-file-kind.ts';
import { fillBlocks } from './fill-values.ts';
import { type LinkContext, linkContext, report } from './link-context.ts';
import { linkSection } from './link-section.ts';
import type { LinkedTree, PlaceOf } from './linked-tree.ts';
import { placeIn } from './place-in.ts';
import { resolveTarget } from './resolve-target.ts';
import { resolveValues } from './resolve-values.ts';

/** Leads every name of the body to the thing it names. Unknown names are reported with those that may have been
 *  meant; the tree that comes out is the best that can be made of the file. */
export function linkTree(
  facts: TreeFacts,
  placeOf: PlaceOf,
  { head, sections }: BodySyntax,
): Staged<LinkedTree> {
  const context = linkContext(
    facts,
    new Set(sections.map(({ syntax }) => syntax.id).filter((id) => id !== '')),
  );
  if (sections.length === 0) noSections(head, context);
  checkTitle(head, context);
  checkSlugs(sections, context);
  checkFileKind(sections, 'tree', context);
  const values = resolveValues(head.syntax.mentions, head.from, context);
  for (const link of head.syntax.mentions.links) resolveTarget(link, head.from, context);
  const linked = sections.flatMap((section) => linkSection(section, context) ?? []);
  const { hazards, blocks } = head.syntax;
  const value: LinkedTree = {
    facts,
    placeOf,
    hazards: hazards.map((hazard) => ({ ...hazard, blocks: fillBlocks(hazard.blocks, values) })),
    blocks: fillBlocks(blocks, values),
    sections: linked,
    open: context.open,
    settingsUsed: context.settingsUsed,
  };
  return { value, diagnostics: context.diagnostics };
}

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
