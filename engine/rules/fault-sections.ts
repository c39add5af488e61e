import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { LinkedSection } from '../link/linked-tree.ts';
import type { Rule } from './rule.ts';

/** Every fault has exactly one section: without one it is never found, with two nobody knows which remedy holds. */
export const faultSections: Rule = ({ facts, sections, placeOf, open }) => {
  const found = new Map<string, LinkedSection>();
  const twice = sections.flatMap((linked) => secondSections(linked, found));
  const missing = facts.faults.filter(
    ({ id }) => !found.has(id) && !facts.foreign.faults.has(id) && !open.has('faults'),
  );
  return [
    ...twice,
    ...missing.map(({ id }) => ({
      code: 'fault-without-section' as const,
      fault: id,
      span: placeOf('faults', id),
    })),
  ];
};

function secondSections(linked: LinkedSection, found: Map<string, LinkedSection>): Diagnostic[] {
  if (linked.section.kind !== 'fault') return [];
  return linked.section.remedies.flatMap(({ fault }, index) => {
    const earlier = found.get(fault);
    if (earlier === undefined) {
      found.set(fault, linked);
      return [];
    }
    const span = linked.faultSpans[index] ?? linked.leadSpan;
    const related = earlier.leadSpan;
    return [{ code: 'fault-with-two-sections' as const, fault, first: earlier.section.title, span, related }];
  });
}
