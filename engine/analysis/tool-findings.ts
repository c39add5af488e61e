import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { LinkedSection, LinkedTree } from '../link/linked-tree.ts';
import type { Reading } from '../model/reading.ts';

/**
 * What is read with a tool that the technician does not own cannot be read. In a tree that lists its tools, a check has
 * no way on then if it has no outcome for that. The tools of the first check are taken for granted: who lacks
 * those does not begin.
 */
export function toolFindings({ facts, sections }: LinkedTree): readonly Diagnostic[] {
  const readings = new Map(facts.readings.map((reading) => [reading.id, reading]));
  const granted = new Set(firstTools(sections, readings));
  return (facts.tools ?? []).flatMap((tool) => {
    if (granted.has(tool)) return [];
    const stuck = sections.filter(
      ({ section }) => section.kind === 'check' && isStuck(section, tool, readings),
    );
    const [first] = stuck;
    if (first === undefined) return [];
    const { title } = first.section;
    return [{ code: 'no-way-without-tool', tool, title, checks: stuck.length, span: first.leadSpan }];
  });
}

type Check = Extract<LinkedSection['section'], { readonly kind: 'check' }>;

/** Only this tool will do for one of its readings, and what that reads decides. */
function isStuck(
  { readings: read, outcomes }: Check,
  tool: string,
  readings: ReadonlyMap<string, Reading>,
): boolean {
  if (outcomes.some(({ condition }) => condition.kind === 'unread')) return false;
  if (new Set(outcomes.map(({ target }) => target)).size < 2) return false;
  return read.some((id) => {
    const tools = readings.get(id)?.with ?? [];
    return (
      tools.length === 1 &&
      tools[0] === tool &&
      outcomes.some(({ condition }) => condition.kind === 'bands' && id in condition.bands)
    );
  });
}

function firstTools(
  sections: readonly LinkedSection[],
  readings: ReadonlyMap<string, Reading>,
): readonly string[] {
  for (const { section } of sections) {
    if (section.kind !== 'check') continue;
    const tools = section.readings.flatMap((id) => readings.get(id)?.with ?? []);
    if (tools.length > 0) return tools;
  }
  return [];
}
