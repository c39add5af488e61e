import type { Need } from '../model/reading.ts';
import type { TaskSection } from '../model/section.ts';
import { knownNow } from './known-now.ts';
import type { Session } from './session.ts';
import { waysIn } from './ways-in.ts';

/** How somebody gets to a section from anywhere. */
export interface Approach {
  /** Where to go: the section itself, or the first task that has to be done before it. */
  readonly section: string;
  /** In the order in which they are done. */
  readonly tasks: readonly TaskSection[];
  /** What the board must be in for the section to mean what it says. */
  readonly wants: Readonly<Record<string, string>>;
}

/**
 * A section that only tasks lead into needs one of them done: its conditions to hold, or, where it sets none, itself to have been
 * done on the board as it is. One that only ends of procedures lead into needs such an end. Null where it cannot be gone to now.
 *
 *     Clean the contacts, 12 minutes → After cleaning        go to the task
 *     Strip the board (cards out)    → Pins and socket       go there at once while the cards are out
 */
export function approachTo(
  session: Session,
  section: string,
  above: readonly string[] = [],
): Approach | null {
  const here: Approach = { section, tasks: [], wants: {} };
  const ways = waysIn(session.loaded.tree).get(section) ?? [];
  if (ways.length === 0 || ways.some(({ kind }) => kind === 'open')) return here;
  const approaches = ways.flatMap((way): readonly Approach[] => {
    if (way.kind === 'call') return hasEnded(session, way.from.id, section) ? [here] : [];
    if (way.kind === 'open' || above.includes(way.from.id)) return [];
    const task = way.from;
    if (isDone(session, task)) return [{ ...here, wants: task.sets }];
    const before = approachTo(session, task.id, [...above, section]);
    if (before === null) return [];
    return [
      { section: before.section, tasks: [...before.tasks, task], wants: { ...before.wants, ...task.sets } },
    ];
  });
  return approaches.toSorted((a, b) => minutesOn(a) - minutesOn(b))[0] ?? null;
}

/** Minutes of the tasks on the way, waiting included. */
const minutesOn = ({ tasks }: Approach): number =>
  tasks.reduce((sum, { minutes, wait }) => sum + minutes + wait, 0);

/** What must have been seen before any of it. */
export const needsOn = ({ tasks }: Approach): readonly Need[] => tasks.flatMap(({ onlyIf }) => onlyIf);

function isDone({ position, effective }: Session, { id, sets }: TaskSection): boolean {
  const wanted = Object.entries(sets);
  if (wanted.length > 0)
    return wanted.every(([condition, value]) => position.conditions[condition] === value);
  const since = position.remedies.at(-1)?.entry ?? -1;
  return effective.some((entry, index) => index > since && entry.kind === 'did' && entry.section === id);
}

function hasEnded(session: Session, id: string, target: string): boolean {
  const call = session.loaded.sections.get(id);
  const known = knownNow(session, id);
  if (call?.kind !== 'call' || known === null) return false;
  const leading = call.ends.filter((end) => end.target === target).map(({ end }) => end);
  return known.bands.some((band) => leading.includes(band));
}
