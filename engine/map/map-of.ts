import type { CompiledTree } from '../model/compiled-tree.ts';
import type { CallSection } from '../model/section.ts';
import { callerOf, sectionNumbers } from '../outline/section-numbers.ts';
import { chartsOf } from './charts-of.ts';
import type { MapGraph } from './map-graph.ts';
import { signalOf } from './tell-section.ts';

/**
 * A tree as a flowchart in pieces: the tree itself, cut where it gets too deep, then the inside of each call. Where a
 * line would run far it ends in a circle with the number of the section at which it goes on.
 */
export function mapOf(tree: CompiledTree): MapGraph {
  const numbers = sectionNumbers(tree.sections);
  const inside = (call: string) => tree.sections.filter(({ id }) => callerOf(id) === call);
  const calls = tree.sections.filter((section): section is CallSection => section.kind === 'call');
  return {
    title: tree.title,
    symptom: tree.symptom,
    charts: [
      ...chartsOf({
        sections: inside(''),
        numbers,
        heading: null,
        begin: { title: tree.symptom, notes: signalOf(tree.hazards) },
        first: tree.sections[0]?.id ?? '',
        ends: [],
      }),
      ...calls.flatMap((call) =>
        chartsOf({
          sections: inside(call.id),
          numbers,
          heading: `${numbers.get(call.id)}  ${call.title}`,
          begin: {
            title: call.procedureTitle,
            notes: call.given.map(({ name, value }) => `${name} = ${value}`),
          },
          first: call.first,
          ends: call.ends,
        }),
      ),
    ],
  };
}
