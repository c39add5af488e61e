import { replacing, report } from '../read-context.ts';
import { outcomesOf } from './outcomes-of.ts';
import type { SectionKind } from './section-kind.ts';

export const check: SectionKind<'Read'> = {
  kind: 'check',
  word: 'Read',
  branches: true,
  build({ base, lead, leadSpan, parts }, context) {
    const outcomes = outcomesOf(parts, context);
    if (outcomes === null && !base.doubtful) {
      const end = { from: leadSpan.to, to: leadSpan.to };
      const fix = replacing(
        'Begin a list of outcomes',
        end,
        '\n\n- all good → [Title](#title)\n- otherwise → [Title](#title)',
      );
      report(context, { code: 'check-without-outcomes' }, leadSpan, fix);
    }
    return { ...base, kind: 'check', readings: lead.names, outcomes: outcomes ?? [] };
  },
};
