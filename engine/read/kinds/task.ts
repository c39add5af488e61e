import { report } from '../read-context.ts';
import type { SectionKind } from './section-kind.ts';

export const task: SectionKind<'Do'> = {
  kind: 'task',
  word: 'Do',
  build({ base, lead, leadSpan, parts }, context) {
    const then = parts.flatMap((part) =>
      part.kind === 'lead' && part.lead.word === 'Then' ? [part.lead] : [],
    )[0];
    if (then === undefined && !base.doubtful) report(context, { code: 'task-without-then' }, leadSpan);
    if (then && then.link.section === null) {
      report(context, { code: 'outcome-elsewhere', url: then.link.url }, then.link.span);
    }
    const target = then && then.link.section !== null ? then.link : null;
    return {
      ...base,
      kind: 'task',
      task: lead.task,
      minutes: lead.minutes,
      wait: lead.wait,
      sets: [],
      onlyIf: null,
      target,
    };
  },
};
