import type { Section } from '../model/section.ts';

/** Whether what was read before an arc still holds behind it. */
export type Forgets = (from: Section, to: Section) => boolean;

/**
 * A band that was read counts only while nothing can have changed the board. It is forgotten
 *
 *     at a task
 *     at a call whose procedure has a task
 *     on every arc to a section at or above the one it leaves: who comes back has done something in between
 */
export function forgettingIn(sections: readonly Section[]): Forgets {
  const place = placesOf(sections);
  const working = new Set(sections.flatMap(({ kind, id }) => (kind === 'task' ? callersOf(id) : [])));
  return (from, to) =>
    from.kind === 'task' ||
    (from.kind === 'call' && working.has(from.id)) ||
    !isBelow(place.get(to.id) ?? [], place.get(from.id) ?? []);
}

/** `a`, `a.b` for `a.b.c`. */
const callersOf = (id: string): readonly string[] => {
  const parts = id.split('.');
  return parts.slice(1).map((_, at) => parts.slice(0, at + 1).join('.'));
};

/** Sections in the order in which they are read: those of a call below the call, wherever the list has them. */
function placesOf(sections: readonly Section[]): ReadonlyMap<string, readonly number[]> {
  const index = new Map(sections.map(({ id }, at) => [id, at]));
  return new Map(sections.map(({ id }) => [id, [...callersOf(id), id].map((each) => index.get(each) ?? -1)]));
}

function isBelow(place: readonly number[], other: readonly number[]): boolean {
  for (const [at, number] of place.entries()) {
    const beside = other[at];
    if (beside === undefined) return true;
    if (number !== beside) return number > beside;
  }
  return false;
}
