import type { Machine, MachineState } from '../model/machine.ts';
import { xmlName } from './xml-name.ts';

/** The keys that lead to a state from the machine's root. */
export type StatePath = readonly string[];

export const idOf = (path: StatePath): string => path.map(xmlName).join('.');

/** The state that a transition of the state at `path` leads to: `#tree.s-a.s-b` counts from the root, `proof-1` is a
 *  neighbour. */
export function targetOf(machine: Machine, path: StatePath, target: string): StatePath {
  const root = `#${machine.id}.`;
  const found = target.startsWith(root)
    ? target.slice(root.length).split('.')
    : [...path.slice(0, -1), ...target.split('.')];
  if (!exists(machine, found)) throw new Error(`expected the machine to hold the target "${target}"`);
  return found;
}

const exists = (machine: MachineState, path: StatePath): boolean =>
  path.reduce<MachineState | undefined>((state, key) => state?.states?.[key], machine) !== undefined;
