import { type Hazard, signalWords } from '../model/prose.ts';
import type { Section } from '../model/section.ts';
import type { MapNode } from './map-graph.ts';

type Told = Pick<MapNode, 'symbol' | 'notes' | 'role'>;

type Tellers = {
  readonly [Kind in Section['kind']]: (section: Extract<Section, { readonly kind: Kind }>) => Told;
};

const tellers: Tellers = {
  check: ({ readings, hazards }) => ({
    symbol: 'manual-input',
    role: 'check',
    notes: [readings.join(', '), ...signalOf(hazards)],
  }),
  task: ({ minutes, sets, hazards }) => ({
    symbol: 'process',
    role: 'task',
    notes: [
      [`${minutes} min`, ...Object.entries(sets).map(([condition, value]) => `${condition} ${value}`)].join(
        ', ',
      ),
      ...signalOf(hazards),
    ],
  }),
  call: ({ procedureTitle, given, hazards }) => ({
    symbol: 'predefined-process',
    role: 'procedure',
    notes: [procedureTitle, ...given.map(({ name, value }) => `${name} = ${value}`), ...signalOf(hazards)],
  }),
  fault: ({ remedies, hazards }) => ({
    symbol: 'process',
    role: 'fault',
    notes: [
      remedies.length > 1 ? `${remedies.length} remedies, proof` : 'remedy, proof',
      ...signalOf([...hazards, ...remedies.flatMap((remedy) => remedy.hazards)]),
    ],
  }),
  stop: ({ hazards }) => ({ symbol: 'terminator', role: 'stop', notes: signalOf(hazards) }),
  'hand-over': ({ hazards }) => ({
    symbol: 'terminator',
    role: 'another tree',
    notes: ['another tree', ...signalOf(hazards)],
  }),
};

/** A section as a symbol with what stands in it. */
export const tellSection = (section: Section): Told => tellers[section.kind](section as never);

/** The gravest signal word, alone: what it says stands in the tree. */
export function signalOf(hazards: readonly Hazard[]): readonly string[] {
  const gravest = signalWords.find((word) => hazards.some((hazard) => hazard.word === word));
  return gravest === undefined ? [] : [gravest.toUpperCase()];
}
