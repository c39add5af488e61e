import { checkLeads } from './check-leads.ts';
import { sectionKinds } from './kinds/index.ts';
import type { Material, SectionKind } from './kinds/section-kind.ts';
import { leadLines } from './leads/index.ts';
import type { Part } from './parts.ts';
import { type ReadContext, report } from './read-context.ts';
import type { SectionSyntax } from './section-syntax.ts';

/** Makes the section that its lead line asks for. */
export function buildSection(
  base: Material['base'],
  parts: readonly Part[],
  context: ReadContext,
): SectionSyntax {
  const leads = parts.filter((part) => part.kind === 'lead');
  checkLeads(leads, base.doubtful, context);
  const maker = leads.find(({ lead }) => leadLines[lead.word].makes !== null);
  const kind = maker && leadLines[maker.lead.word].makes;
  const branches = kind ? sectionKinds[kind].branches : false;
  if (!branches && !base.doubtful) checkStrayOutcomes(parts, context);
  if (maker === undefined || kind === null || kind === undefined) {
    const explained = base.doubtful || leads.length > 0 || parts.some((part) => part.kind === 'outcomes');
    if (!explained) report(context, { code: 'section-without-lead-line', title: base.title }, base.titleSpan);
    return { ...base, kind: 'unknown' };
  }
  const { lead, span: leadSpan } = maker;
  const row = sectionKinds[kind] as SectionKind;
  return row.build({ base: { ...base, leadSpan }, lead, leadSpan, parts }, context);
}

function checkStrayOutcomes(parts: readonly Part[], context: ReadContext): void {
  const stray = parts.find((part) => part.kind === 'outcomes');
  if (stray) report(context, { code: 'outcomes-without-read' }, stray.span);
}
