import { report } from '../read-context.ts';
import type { SectionKind } from './section-kind.ts';

export const end: SectionKind<'End'> = {
  kind: 'end',
  word: 'End',
  branches: false,
  build({ base, lead, leadSpan, parts }, context) {
    const [first, ...others] = lead.names;
    if (others.length > 0)
      report(context, { code: 'several-ends', ends: lead.names.map(({ name }) => name) }, leadSpan);
    for (const { kind, span } of parts) {
      if (kind === 'prose' || kind === 'hazard') report(context, { code: 'beside-end' }, span);
    }
    return first === undefined ? { ...base, kind: 'unknown' } : { ...base, kind: 'end', end: first };
  },
};
