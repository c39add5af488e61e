import { report } from '../read-context.ts';
import { onlyIfOf } from './only-if-of.ts';
import type { SectionKind } from './section-kind.ts';

export const task: SectionKind<'Do'> = {
  kind: 'task',
  word: 'Do',
  branches: false,
  build({ base, lead, leadSpan, parts }, context) {
    const then = parts.flatMap((part) =>
      part.kind === 'lead' && part.lead.word === 'Then' ? [part.lead] : [],
    )[0];
    if (then === undefined && !base.doubtful) report(context, { code: 'task-without-then' }, leadSpan);
    const leads = then !== undefined && (then.link.section !== null || then.link.file !== null);
    if (then && !leads) report(context, { code: 'outcome-elsewhere', url: then.link.url }, then.link.span);
    const target = leads ? then.link : null;
    return {
      ...base,
      kind: 'task',
      task: lead.task,
      minutes: lead.minutes,
      wait: lead.wait,
      sets: lead.sets,
      onlyIf: onlyIfOf(parts),
      target,
    };
  },
};
