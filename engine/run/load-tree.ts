import { initialTransition, setup } from 'xstate';
import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Fault } from '../model/fault.ts';
import type { MachineEvent } from '../model/machine.ts';
import type { Reading } from '../model/reading.ts';
import type { Section } from '../model/section.ts';
import type { Setting } from '../model/setting.ts';
import { guards } from './guards.ts';

const blueprint = setup({ types: { events: {} as MachineEvent }, guards });

export type TreeMachine = ReturnType<typeof blueprint.createMachine>;
export type MachineSnapshot = ReturnType<TreeMachine['getInitialSnapshot']>;

/** A compiled tree ready to be walked: its machine made, its parts by id. */
export interface LoadedTree {
  readonly tree: CompiledTree;
  readonly machine: TreeMachine;
  readonly initial: MachineSnapshot;
  readonly settings: ReadonlyMap<string, Setting>;
  readonly readings: ReadonlyMap<string, Reading>;
  readonly faults: ReadonlyMap<string, Fault>;
  readonly sections: ReadonlyMap<string, Section>;
}

const byId = <T extends { readonly id: string }>(items: readonly T[]): ReadonlyMap<string, T> =>
  new Map(items.map((item) => [item.id, item]));

export function loadTree(tree: CompiledTree): LoadedTree {
  type Config = Parameters<typeof blueprint.createMachine>[0];
  // The machine is plain JSON, checked against its own schema; XState's types want literals.
  const machine = blueprint.createMachine(tree.machine as unknown as Config);
  const [initial] = initialTransition(machine);
  return {
    tree,
    machine,
    initial,
    settings: byId(tree.settings),
    readings: byId(tree.readings),
    faults: byId(tree.faults),
    sections: byId(tree.sections),
  };
}
