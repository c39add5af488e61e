import type { Placed } from '../read/body-syntax.ts';
import type { SectionSyntax } from '../read/section-syntax.ts';
import { fillProse } from './fill-prose.ts';
import { linkCall } from './kinds/link-call.ts';
import { linkCheck } from './kinds/link-check.ts';
import { linkEnd } from './kinds/link-end.ts';
import { linkFault } from './kinds/link-fault.ts';
import type { LinkKind } from './kinds/link-kind.ts';
import { linkStop } from './kinds/link-stop.ts';
import { linkTask } from './kinds/link-task.ts';
import { leaveOpen } from './leave-open.ts';
import type { LinkContext } from './link-context.ts';
import type { LinkedSection } from './linked-tree.ts';
import { placeIn } from './place-in.ts';
import { resolveTarget } from './resolve-target.ts';
import { resolveValues } from './resolve-values.ts';

const kinds: { readonly [Kind in SectionSyntax['kind']]: LinkKind<Kind> } = {
  check: linkCheck,
  task: linkTask,
  call: linkCall,
  end: linkEnd,
  fault: linkFault,
  stop: linkStop,
  unknown: ({ context }) => leaveOpen(context),
};

/** A section with its names resolved. */
export interface LinkedAlone extends LinkedSection {
  /** What the sections of the procedure that it follows are linked by. */
  readonly inside?: LinkContext;
}

/** A section with its names resolved; null where its kind is unknown. */
export function linkSection(
  { syntax, from }: Placed<SectionSyntax>,
  context: LinkContext,
): LinkedAlone | null {
  if (syntax.doubtful) context.open.add('ways');
  const values = resolveValues(syntax.mentions, from, context);
  for (const link of syntax.mentions.links) if (link.file === null) resolveTarget(link, from, context);
  const id = `${context.within?.prefix ?? ''}${syntax.id}`;
  const base = { id, title: syntax.title, ...fillProse(syntax, values) };
  const link = kinds[syntax.kind] as LinkKind<'unknown'>;
  const made = link({ syntax, base, from, values, context } as never);
  return (
    made && {
      outcomeSpans: [],
      faultSpans: [],
      ...made,
      titleSpan: placeIn(from, syntax.titleSpan),
      leadSpan: placeIn(from, syntax.leadSpan),
      risks: syntax.risks.map((risk) => ({ ...risk, span: placeIn(from, risk.span) })),
    }
  );
}
