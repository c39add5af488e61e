import type { Section } from '../model/section.ts';
import type { Arc } from './arcs.ts';
import type { Name, Names } from './names.ts';

/** Names that are computed from each other: what is known of one says something about the rest. */
function familiesOf(names: Names): ReadonlyMap<string, readonly string[]> {
  const family = new Map<string, Set<string>>(names.list.map(({ id }) => [id, new Set([id])]));
  for (const { id, derived } of names.list) {
    for (const input of derived?.inputs ?? []) {
      const [one, other] = [family.get(id), family.get(input)];
      if (one === undefined || other === undefined || one === other) continue;
      for (const member of other) {
        one.add(member);
        family.set(member, one);
      }
    }
  }
  return new Map([...family].map(([id, members]) => [id, [...members]]));
}

/** The names that a check asks or decides by. */
export function namesAt(section: Section): readonly string[] {
  if (section.kind !== 'check') return [];
  const decided = section.outcomes.flatMap(({ condition }) =>
    condition.kind === 'bands' ? Object.keys(condition.bands) : [],
  );
  return [...new Set([...section.readings, ...decided])];
}

/**
 * Which names are worth knowing on entering each section: those that are looked at there or further on, before the board
 * can have changed. Most trees read most things once, so that hardly anything is.
 * @returns names in the order of the table, by section
 */
export function liveNames(
  sections: readonly Section[],
  arcs: ReadonlyMap<string, readonly Arc[]>,
  names: Names,
): ReadonlyMap<string, readonly Name[]> {
  const families = familiesOf(names);
  const readAt = new Map<string, number>();
  for (const section of sections) {
    for (const id of new Set(namesAt(section).flatMap((name) => families.get(name) ?? [])))
      readAt.set(id, (readAt.get(id) ?? 0) + 1);
  }
  const worth = names.list.filter(({ id, setting }) => setting || (readAt.get(id) ?? 0) > 1);
  const worthIds = new Set(worth.map(({ id }) => id));
  const backwards = new Map<string, { readonly from: string; readonly forgets: boolean }[]>();
  for (const [from, targets] of arcs) {
    for (const { to, forgets } of targets) {
      const list = backwards.get(to);
      if (list === undefined) backwards.set(to, [{ from, forgets }]);
      else list.push({ from, forgets });
    }
  }
  const live = new Map<string, Set<string>>(sections.map(({ id }) => [id, new Set()]));
  const settings = new Set(names.list.filter(({ setting }) => setting).map(({ id }) => id));
  for (const section of sections) {
    const looked = namesAt(section).flatMap((name) => families.get(name) ?? []);
    for (const name of new Set(looked)) {
      if (worthIds.has(name)) spread(name, section.id, settings.has(name), live, backwards);
    }
  }
  return new Map([...live].map(([section, ids]) => [section, worth.filter(({ id }) => ids.has(id))]));
}

/** A name that is looked at in a section is worth knowing in every section that leads there with it. */
function spread(
  name: string,
  start: string,
  lasting: boolean,
  live: ReadonlyMap<string, Set<string>>,
  backwards: ReadonlyMap<string, readonly { readonly from: string; readonly forgets: boolean }[]>,
): void {
  const open = [start];
  for (let section = open.pop(); section !== undefined; section = open.pop()) {
    const here = live.get(section);
    if (here === undefined || here.has(name)) continue;
    here.add(name);
    for (const { from, forgets } of backwards.get(section) ?? []) if (lasting || !forgets) open.push(from);
  }
}
