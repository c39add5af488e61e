import type { CompiledTree } from '../../model/compiled-tree.ts';
import type { TaskSection } from '../../model/section.ts';
import { type WayIn, waysIn } from '../../run/ways-in.ts';

/** What has to be done on the board before a section means what it says. */
export interface WorkBefore {
  /** Tasks that set no condition, in the order in which they are done. */
  readonly tasks: readonly TaskSection[];
  /** Conditions that tasks before it bring about. */
  readonly wants: Readonly<Record<string, string>>;
}

const nothing: WorkBefore = { tasks: [], wants: {} };

/** A section that only tasks lead into needs the one of them that takes the least. One that a check leads into needs none, and
 *  what ends of procedures lead into is taken for open. */
export function workBefore(tree: CompiledTree, section: string, above: readonly string[] = []): WorkBefore {
  const ways = waysIn(tree).get(section) ?? [];
  if (ways.length === 0 || ways.some(({ kind }) => kind !== 'task')) return nothing;
  const works = ways.flatMap((way) => byTask(tree, way, [...above, section]));
  return works.toSorted((one, other) => minutesOf(one) - minutesOf(other))[0] ?? nothing;
}

function byTask(tree: CompiledTree, way: WayIn, above: readonly string[]): readonly WorkBefore[] {
  if (way.kind !== 'task' || above.includes(way.from.id)) return [];
  const { sets } = way.from;
  // Where its conditions hold the task is as good as done, whoever brought them about.
  if (Object.keys(sets).length > 0) return [{ tasks: [], wants: sets }];
  const before = workBefore(tree, way.from.id, above);
  return [{ tasks: [...before.tasks, way.from], wants: before.wants }];
}

const minutesOf = ({ tasks }: WorkBefore): number =>
  tasks.reduce((sum, { minutes, wait }) => sum + minutes + wait, 0);
