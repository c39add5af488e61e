import type { Placed } from '../read/body-syntax.ts';
import type { SectionSyntax } from '../read/section-syntax.ts';
import { fillProse } from './fill-prose.ts';
import { linkCheck } from './kinds/link-check.ts';
import { linkFault } from './kinds/link-fault.ts';
import type { LinkKind } from './kinds/link-kind.ts';
import { linkStop } from './kinds/link-stop.ts';
import { linkTask } from './kinds/link-task.ts';
import type { LinkContext } from './link-context.ts';
import type { LinkedSection } from './linked-tree.ts';
import { placeIn } from './place-in.ts';
import { resolveTarget } from './resolve-target.ts';
import { resolveValues } from './resolve-values.ts';

const nothing: LinkKind<'unknown'> = ({ context }) => {
  for (const aspect of ['ways', 'faults', 'readings'] as const) context.open.add(aspect);
  return null;
};

const kinds: { readonly [Kind in SectionSyntax['kind']]: LinkKind<Kind> } = {
  check: linkCheck,
  task: linkTask,
  fault: linkFault,
  stop: linkStop,
  call: nothing as never,
  end: nothing as never,
  unknown: nothing,
};

/** A section with its names resolved; null where its kind is unknown. */
export function linkSection(
  { syntax, from }: Placed<SectionSyntax>,
  context: LinkContext,
): LinkedSection | null {
  if (syntax.doubtful) context.open.add('ways');
  const values = resolveValues(syntax.mentions, from, context);
  for (const link of syntax.mentions.links) resolveTarget(link, from, context);
  const base = { id: syntax.id, title: syntax.title, ...fillProse(syntax, values) };
  const link = kinds[syntax.kind] as LinkKind<'unknown'>;
  const made = link({ syntax, base, from, values, context } as never);
  return (
    made && {
      outcomeSpans: [],
      faultSpans: [],
      ...made,
      titleSpan: placeIn(from, syntax.titleSpan),
      risks: syntax.risks.map((risk) => ({ ...risk, span: placeIn(from, risk.span) })),
      leadSpan: placeIn(from, syntax.leadSpan),
    }
  );
}
