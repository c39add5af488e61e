import type { Section } from '../model/section.ts';
import type { Rule } from './rule.ts';

/** A reading that no section takes. */
export const unusedReading: Rule = ({ facts, sections, placeOf, open }) => {
  if (open.has('readings')) return [];
  const used = new Set([
    ...sections.flatMap(({ section }) => readingsOf(section)),
    ...facts.given.map(({ reading }) => reading),
  ]);
  return facts.readings
    .filter(({ id }) => !used.has(id))
    .map(({ id }) => ({ code: 'unused-reading', reading: id, span: placeOf('readings', id) }));
};

function readingsOf(section: Section): readonly string[] {
  if (section.kind === 'check') return section.readings;
  return section.kind === 'fault' ? section.proof : [];
}
