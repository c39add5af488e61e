import { type AnyActorScope, initialTransition, setup } from 'xstate';
import { fitBoard } from '../board/index.ts';
import type { CompiledBoard } from '../model/compiled-board.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Fault } from '../model/fault.ts';
import type { MachineEvent } from '../model/machine.ts';
import type { Reading } from '../model/reading.ts';
import type { Section } from '../model/section.ts';
import type { Setting } from '../model/setting.ts';
import { oneOfMany } from '../names/one-of-many.ts';
import { inputsOf } from '../scale/index.ts';
import { guards } from './guards.ts';
import { stillScope } from './still-scope.ts';

const blueprint = setup({ types: { events: {} as MachineEvent }, guards });

export type TreeMachine = ReturnType<typeof blueprint.createMachine>;
export type MachineSnapshot = ReturnType<TreeMachine['getInitialSnapshot']>;

/** A compiled tree ready to be walked on one board: its machine made, its parts by id. */
export interface LoadedTree {
  /** With the board's own limits in place of the tree's. */
  readonly tree: CompiledTree;
  /** What the board sheet says and this tree cannot use. */
  readonly boardMisfits: readonly string[];
  readonly machine: TreeMachine;
  readonly scope: AnyActorScope;
  readonly initial: MachineSnapshot;
  readonly settings: ReadonlyMap<string, Setting>;
  readonly readings: ReadonlyMap<string, Reading>;
  /** Ids of readings that are the one of many alike in a band: `the short one of rails`. */
  readonly ones: readonly string[];
  /** The readings that are computed, each after those that it is computed from. */
  readonly derived: readonly Reading[];
  readonly faults: ReadonlyMap<string, Fault>;
  readonly sections: ReadonlyMap<string, Section>;
}

const noBoard = {};
const loadedTrees = new WeakMap<CompiledTree, WeakMap<object, LoadedTree>>();

/** Making a machine is slow, and a job is replayed again and again: each tree is loaded once for each board. */
export function loadTree(tree: CompiledTree, board: CompiledBoard | null = null): LoadedTree {
  const onBoards = loadedTrees.get(tree) ?? new WeakMap<object, LoadedTree>();
  loadedTrees.set(tree, onBoards);
  const loaded = onBoards.get(board ?? noBoard) ?? load(tree, board);
  onBoards.set(board ?? noBoard, loaded);
  return loaded;
}

const byId = <T extends { readonly id: string }>(items: readonly T[]): ReadonlyMap<string, T> =>
  new Map(items.map((item) => [item.id, item]));

function load(compiled: CompiledTree, board: CompiledBoard | null): LoadedTree {
  const { tree, misfits } = board === null ? { tree: compiled, misfits: [] } : fitBoard(compiled, board);
  type Config = Parameters<typeof blueprint.createMachine>[0];
  // The machine is plain JSON, checked against its own schema; XState's types want literals.
  const machine = blueprint.createMachine(tree.machine as unknown as Config);
  const [initial] = initialTransition(machine);
  return {
    tree,
    boardMisfits: misfits,
    machine,
    scope: stillScope(machine),
    initial,
    settings: byId(tree.settings),
    readings: byId(tree.readings),
    ones: tree.readings.map(({ id }) => id).filter((id) => oneOfMany(id) !== null),
    derived: derivedIn(tree),
    faults: byId(tree.faults),
    sections: byId(tree.sections),
  };
}

function derivedIn({ readings }: CompiledTree): readonly Reading[] {
  const left = new Map(readings.filter(({ from }) => from !== null).map((reading) => [reading.id, reading]));
  const sorted: Reading[] = [];
  const visit = (id: string): void => {
    const reading = left.get(id);
    if (reading === undefined) return;
    left.delete(id);
    inputsOf(reading).forEach(visit);
    sorted.push(reading);
  };
  for (const { id } of readings) visit(id);
  return sorted;
}
