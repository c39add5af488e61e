import { lacksTool } from '../doubt/index.ts';
import type { Reading } from '../model/reading.ts';
import type { Drill, DrillCheck } from './drill.ts';
import { groundOf } from './ground-of.ts';
import { seenIn } from './seen-in.ts';
import { guardsBefore, sectionOf } from './warnings-before.ts';
import { workFor } from './work-for.ts';

/** Everything that can be measured on the board, in the tree's order: whoever learns picks freely, and is warned. */
export function checksIn(drill: Drill): readonly DrillCheck[] {
  const seen = seenIn(drill);
  const wanted = wantedIn(drill);
  return drill.tree.readings
    .filter((reading) => wanted.has(reading.id) && canBeTaken(drill, reading))
    .map((reading) => ({
      ...checkOf(drill, reading),
      taken: seen.filter(({ event }) => event.reading === reading.id).map(({ event }) => event.typed),
    }));
}

/** What the sections read, and what must have been seen before that. Shared files bring along more than a tree asks for. */
function wantedIn(drill: Drill): ReadonlySet<string> {
  const { readings } = groundOf(drill);
  const wanted = new Set(
    drill.tree.sections.flatMap((section) => (section.kind === 'check' ? section.readings : [])),
  );
  for (const { reading } of drill.tree.given) wanted.add(reading);
  for (const id of wanted) {
    for (const { reading } of readings.get(id)?.onlyIf ?? []) wanted.add(reading);
  }
  return wanted;
}

/** What is computed is not taken, nor is the end of a procedure; a condition that the tree does not have cannot be brought about. */
const canBeTaken = (drill: Drill, { from, call, when }: Reading): boolean =>
  from === null && !call && groundOf(drill).arranging.minutesTo(when, drill.conditions) !== null;

/** One reading as a check: what has to be done and changed before it is counted in. */
export function checkOf(drill: Drill, reading: Reading): Omit<DrillCheck, 'taken'> {
  const { arranging } = groundOf(drill);
  const section = sectionOf(drill, reading.id);
  const { tasks, wants } = workFor(drill, reading);
  return {
    reading,
    section: section?.id ?? null,
    minutes:
      reading.minutes +
      (arranging.minutesTo(wants, drill.conditions) ?? 0) +
      sumOf(tasks, ({ minutes }) => minutes),
    wait: reading.wait + sumOf(tasks, ({ wait }) => wait),
    changes: Object.fromEntries(
      Object.entries(wants).filter(([id, value]) => drill.conditions[id] !== value),
    ),
    wants,
    warnings: guardsBefore(drill, reading, section).map(({ kind, text }) => ({ kind, text })),
    lacks: lacksTool(reading, drill.equipment),
  };
}

const sumOf = <T>(items: readonly T[], of: (item: T) => number): number =>
  items.reduce((sum, item) => sum + of(item), 0);
