import type { CompiledTree } from '../../model/compiled-tree.ts';
import type { Need, Reading } from '../../model/reading.ts';
import type { TaskSection } from '../../model/section.ts';
import { openSession } from '../../run/index.ts';
import { ohmsBefore } from '../../run/power-order.ts';
import { readIn } from '../../run/read-in.ts';
import { inputsOf } from '../../suspects/inputs-of.ts';
import { workBefore } from './work-before.ts';

/** Which readings may be taken: those that the tree takes, or all that are declared. */
export type Which = 'taken' | 'declared';

/** A reading that can be taken, or a task that has to be done before one; what stands before it is told by id. */
export interface TreeColumn {
  readonly id: string;
  /** Null for a task. */
  readonly reading: Reading | null;
  readonly minutes: number;
  readonly wait: number;
  readonly after: readonly string[];
  readonly only: readonly Need[];
  readonly when: Readonly<Record<string, string>>;
}

/** What can be taken of a tree, and what the tree demands before it: what it says itself (`after`, `only if`, what a computed one is
 *  computed from), the resistances before the power is on, and the tasks and conditions without which its section means nothing. What no
 *  column stands for need not be seen first: the tree begins where that has been done. */
export function columnsOf(tree: CompiledTree, which: Which): readonly TreeColumn[] {
  const readings = readingsOf(tree, which);
  const tasks = new Map<string, TaskSection>();
  const columns = readings.map((reading) => columnOf(tree, reading, tasks));
  const known = new Set([...columns.map(({ id }) => id), ...tasks.keys()]);
  return [...[...tasks.values()].map(taskColumn), ...columns].map((column) => ({
    ...column,
    after: [...new Set(column.after)].filter((id) => id !== column.id && known.has(id)),
    only: once(column.only).filter(({ reading }) => reading !== column.id && known.has(reading)),
  }));
}

/** Each demand once. */
const once = (needs: readonly Need[]): readonly Need[] => [
  ...new Map(needs.map((need) => [JSON.stringify([need.reading, need.bands]), need])).values(),
];

function readingsOf(tree: CompiledTree, which: Which): readonly Reading[] {
  const given = new Set(tree.given.map(({ reading }) => reading));
  const taken = readIn(tree);
  const wanted = tree.readings.filter(
    ({ id, call, from }) =>
      !call && from === null && !given.has(id) && (which === 'declared' || taken.has(id)),
  );
  const ids = new Set([...given, ...wanted.map(({ id }) => id)]);
  const computed = tree.readings.filter(
    (reading) => reading.from !== null && inputsOf(reading, tree).every((id) => ids.has(id)),
  );
  return [...wanted, ...computed];
}

function columnOf(tree: CompiledTree, reading: Reading, tasks: Map<string, TaskSection>): TreeColumn {
  const { id, minutes, wait, after, onlyIf, when } = reading;
  const [section] = (readIn(tree).get(id) ?? []).toSorted(
    (one, other) => taskMinutes(tree, one.id) - taskMinutes(tree, other.id),
  );
  const before = section === undefined ? null : workBefore(tree, section.id);
  for (const task of before?.tasks ?? []) tasks.set(task.id, task);
  const needs = before?.tasks.flatMap((task) => task.onlyIf) ?? [];
  const ohms = section === undefined ? [] : ohmsBefore(openSession(tree), reading, section.id);
  return {
    id,
    reading,
    minutes: reading.from === null ? minutes : 0,
    wait: reading.from === null ? wait : 0,
    after: [
      ...after,
      ...inputsOf(reading, tree),
      ...ohms.flatMap((demand) => (demand.bands === null ? [demand.reading] : [])),
      ...(before?.tasks.map((task) => task.id) ?? []),
    ],
    only: [
      ...onlyIf,
      ...needs,
      ...ohms.flatMap(({ reading: ohm, bands }) => (bands === null ? [] : [{ reading: ohm, bands }])),
    ],
    when: { ...before?.wants, ...when },
  };
}

const taskMinutes = (tree: CompiledTree, section: string): number =>
  workBefore(tree, section).tasks.reduce((sum, { minutes, wait }) => sum + minutes + wait, 0);

const taskColumn = ({ id, minutes, wait, onlyIf }: TaskSection): TreeColumn => ({
  id,
  reading: null,
  minutes,
  wait,
  after: [],
  only: onlyIf,
  when: {},
});
