import type { Part, PartOf } from '../parts.ts';
import { type ReadContext, report } from '../read-context.ts';
import type { OutcomeSyntax } from '../section-syntax.ts';

/** The outcomes of a section that branches: one list, a second one is reported; null where there is none. */
export function outcomesOf(parts: readonly Part[], context: ReadContext): readonly OutcomeSyntax[] | null {
  const lists = parts.filter((part): part is PartOf<'outcomes'> => part.kind === 'outcomes');
  for (const list of lists.slice(1)) {
    if (context.text.charAt(list.span.from) === '-')
      report(context, { code: 'second-outcome-list' }, list.span);
  }
  return lists.length === 0 ? null : lists.flatMap((list) => list.outcomes);
}
