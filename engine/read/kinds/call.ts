import { replacing, report } from '../read-context.ts';
import { outcomesOf } from './outcomes-of.ts';
import type { SectionKind } from './section-kind.ts';

export const call: SectionKind<'Follow'> = {
  kind: 'call',
  word: 'Follow',
  branches: true,
  build({ base, lead, leadSpan, parts }, context) {
    const { url, file, section, title, span } = lead.procedure;
    if (file === null || section !== null) {
      const fix =
        file === null ? undefined : replacing('Name the file alone', span, url.split('#', 1)[0] ?? '');
      report(context, { code: 'follow-elsewhere', url }, span, fix);
    }
    const seen = new Set<string>();
    for (const { name } of lead.given) {
      if (seen.has(name.name))
        report(
          context,
          { code: 'name-twice', word: 'Follow', name: name.name },
          { from: name.from, to: name.to },
        );
      seen.add(name.name);
    }
    const outcomes = outcomesOf(parts, context);
    if (outcomes === null && !base.doubtful) {
      const end = { from: leadSpan.to, to: leadSpan.to };
      const fix = replacing('Begin a list of outcomes', end, '\n\n- otherwise → [Title](#title)');
      report(context, { code: 'call-without-outcomes' }, leadSpan, fix);
    }
    for (const { condition, span: place } of outcomes ?? []) {
      if (condition?.kind === 'unread') report(context, { code: 'call-not-read' }, place);
    }
    if (file === null) return { ...base, kind: 'unknown' };
    const procedure = { file, title, span };
    return { ...base, kind: 'call', procedure, given: lead.given, outcomes: outcomes ?? [] };
  },
};
