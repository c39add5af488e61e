import { lacksTool } from '../doubt/index.ts';
import type { Reading } from '../model/reading.ts';
import type { Drill, DrillCheck } from './drill.ts';
import { groundOf } from './ground-of.ts';
import { seenIn } from './seen-in.ts';
import { guardsBefore, sectionOf } from './warnings-before.ts';

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

export function checkOf(drill: Drill, reading: Reading): Omit<DrillCheck, 'taken'> {
  const section = sectionOf(drill, reading.id);
  const change = groundOf(drill).arranging.minutesTo(reading.when, drill.conditions) ?? 0;
  return {
    reading,
    section: section?.id ?? null,
    minutes: reading.minutes + change,
    wait: reading.wait,
    changes: Object.fromEntries(
      Object.entries(reading.when).filter(([id, value]) => drill.conditions[id] !== value),
    ),
    warnings: guardsBefore(drill, reading, section).map(({ kind, text }) => ({ kind, text })),
    lacks: lacksTool(reading, drill.equipment),
  };
}
