import { replacing, report } from '../read-context.ts';
import type { SectionKind } from './section-kind.ts';

export const check: SectionKind<'Read'> = {
  kind: 'check',
  word: 'Read',
  build({ base, lead, leadSpan, parts }, context) {
    const lists = parts.filter((part) => part.kind === 'outcomes');
    for (const list of lists.slice(1)) {
      if (context.text.charAt(list.span.from) === '-')
        report(context, { code: 'second-outcome-list' }, list.span);
    }
    if (lists.length === 0 && !base.doubtful) {
      const end = { from: leadSpan.to, to: leadSpan.to };
      const fix = replacing(
        'Begin a list of outcomes',
        end,
        '\n\n- all good → [Title](#title)\n- otherwise → [Title](#title)',
      );
      report(context, { code: 'check-without-outcomes' }, leadSpan, fix);
    }
    return { ...base, kind: 'check', readings: lead.names, outcomes: lists.flatMap((list) => list.outcomes) };
  },
};
