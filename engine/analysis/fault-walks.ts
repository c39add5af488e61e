import type { Fault } from '../model/fault.ts';
import type { Walkable } from '../paths/walkable.ts';
import type { PossibleBands } from '../suspects/possible-bands.ts';
import type { FaultWalk } from './fault-walk.ts';
import { walkFault } from './walk-fault.ts';
import { groundOf } from './walk-ground.ts';
import type { Budget } from './walked-graph.ts';

/** Standings that the walks of one tree may take together. About a second. */
const allStandings = 40_000;

/** The walks of every fault that has a section and can show the symptom, in the order in which they are declared. */
export function faultWalks(
  tree: Walkable,
  possibleUnder: (fault: Fault) => PossibleBands,
  most = allStandings,
): readonly FaultWalk[] {
  const ground = groundOf(tree);
  const housed = new Set(
    tree.sections.flatMap((section) =>
      section.kind === 'fault' ? section.remedies.map(({ fault }) => fault) : [],
    ),
  );
  const budget: Budget = { left: most };
  return tree.faults
    .filter(({ id }) => housed.has(id))
    .flatMap((fault) => walkFault(ground, fault, possibleUnder(fault), budget) ?? []);
}
