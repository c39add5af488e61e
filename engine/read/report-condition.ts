import type { ParsedCondition } from './parse-condition.ts';
import { type ReadContext, report } from './read-context.ts';

/** Reports the problems of a condition that stands at `from`. */
export function reportCondition({ problems }: ParsedCondition, from: number, context: ReadContext): void {
  for (const { facts, fix, ...place } of problems) {
    const span = { from: from + place.from, to: from + Math.max(place.to, place.from) };
    const moved = fix && {
      title: fix.title,
      edits: fix.edits.map((edit) => ({ ...edit, from: from + edit.from, to: from + edit.to })),
    };
    report(context, facts, span, moved);
  }
}
