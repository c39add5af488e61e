import { workBefore } from '../figures/matrix/work-before.ts';
import type { Reading } from '../model/reading.ts';
import type { TaskSection } from '../model/section.ts';
import { readIn } from '../run/read-in.ts';
import type { Drill } from './drill.ts';
import { followed } from './tree-session.ts';

/** What is done on the board before a reading is taken. */
export interface Work {
  /** In the order in which they are done. */
  readonly tasks: readonly TaskSection[];
  /** What the board must be in. */
  readonly wants: Readonly<Record<string, string>>;
}

/** Guided, everything that the tree has done on the way to what it asks for; else the tasks without which the reading means nothing.
 *  What was done already is not done again. */
export function workFor(drill: Drill, reading: Reading): Work {
  const done = new Map<string, number>();
  for (const event of drill.events) {
    if (event.kind === 'worked') done.set(event.section, (done.get(event.section) ?? 0) + 1);
  }
  const isNew = ({ id }: TaskSection): boolean => {
    const times = done.get(id) ?? 0;
    done.set(id, times - 1);
    return times < 1;
  };
  if (drill.plan.manner === 'guided') {
    const { wants, worked } = followed(drill);
    if (wants === reading.id) return { tasks: worked.filter(isNew), wants: reading.when };
  }
  const works = (readIn(drill.tree).get(reading.id) ?? []).map(({ id }) => workBefore(drill.tree, id));
  const [before] = works.toSorted((a, b) => minutesOf(a) - minutesOf(b));
  return {
    tasks: before?.tasks.filter(isNew) ?? [],
    wants: { ...before?.wants, ...reading.when },
  };
}

const minutesOf = ({ tasks }: Pick<Work, 'tasks'>): number =>
  tasks.reduce((sum, { minutes, wait }) => sum + minutes + wait, 0);
