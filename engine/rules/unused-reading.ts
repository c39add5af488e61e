import type { Section } from '../model/section.ts';
import type { Rule } from './rule.ts';

/** A reading of this file that no section takes. What a procedure or a shared file brings along is nobody's mistake here. */
export const unusedReading: Rule = ({ facts, sections, placeOf, open }) => {
  if (open.has('readings')) return [];
  const used = new Set([
    ...sections.flatMap(({ section }) => readingsOf(section)),
    ...facts.given.map(({ reading }) => reading),
    ...facts.readings.flatMap(({ like }) => like ?? []),
    ...[...facts.readings, ...facts.faults].flatMap(({ onlyIf }) => onlyIf.map(({ reading }) => reading)),
  ]);
  return facts.readings
    .filter(({ id, call }) => !call && !isLocal(id) && !facts.foreign.readings.has(id) && !used.has(id))
    .map(({ id }) => ({ code: 'unused-reading', reading: id, span: placeOf('readings', id) }));
};

/** `r_gnd of v5`: declared by a procedure. */
const isLocal = (id: string): boolean => id.includes(' ');

function readingsOf(section: Section): readonly string[] {
  switch (section.kind) {
    case 'check':
      return section.readings;
    case 'task':
      return section.onlyIf.map(({ reading }) => reading);
    case 'fault':
      return [...section.proof, ...section.onlyIf.map(({ reading }) => reading)];
    case 'call':
    case 'stop':
    case 'hand-over':
      return [];
  }
}
