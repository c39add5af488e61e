import type { Section } from '../model/section.ts';
import type { Arc } from './arcs.ts';
import type { Name, Names } from './names.ts';

/** The names that a check asks or decides by. */
export function namesAt(section: Section): readonly string[] {
  if (section.kind !== 'check') return [];
  const decided = section.outcomes.flatMap(({ condition }) =>
    condition.kind === 'bands' ? Object.keys(condition.bands) : [],
  );
  return [...new Set([...section.readings, ...decided])];
}

/**
 * Which names are worth knowing on entering each section: those that may have been read on the way, and that are looked at there or
 * further on, both without the board having changed in between. Most trees read most things once, so that hardly anything is.
 * @returns names in the order of the table, by section
 */
export function liveNames(
  sections: readonly Section[],
  arcs: ReadonlyMap<string, readonly Arc[]>,
  names: Names,
): ReadonlyMap<string, readonly Name[]> {
  const lasting = new Set(names.list.filter(({ setting }) => setting).map(({ id }) => id));
  const onwards = new Map(
    sections.map(({ id }) => [id, (arcs.get(id) ?? []).map(({ to, forgets }) => ({ id: to, forgets }))]),
  );
  const known = new Map<string, Set<string>>(sections.map(({ id }) => [id, new Set()]));
  const wanted = new Map<string, Set<string>>(sections.map(({ id }) => [id, new Set()]));
  const back = backwards(onwards);
  for (const section of sections) {
    const looked = new Set(namesAt(section).flatMap((name) => names.families.get(name) ?? []));
    for (const name of looked) {
      spread(name, section.id, lasting.has(name), wanted, back);
      for (const { id, forgets } of onwards.get(section.id) ?? [])
        if (lasting.has(name) || !forgets) spread(name, id, lasting.has(name), known, onwards);
    }
  }
  return new Map(
    sections.map(({ id }) => [
      id,
      names.list.filter((name) => known.get(id)?.has(name.id) && wanted.get(id)?.has(name.id)),
    ]),
  );
}

type Ways = ReadonlyMap<string, readonly { readonly id: string; readonly forgets: boolean }[]>;

function backwards(onwards: Ways): Ways {
  const back = new Map<string, { readonly id: string; readonly forgets: boolean }[]>();
  for (const [from, targets] of onwards) {
    for (const { id, forgets } of targets) {
      const list = back.get(id);
      if (list === undefined) back.set(id, [{ id: from, forgets }]);
      else list.push({ id: from, forgets });
    }
  }
  return back;
}

/** Marks a name in a section and in all that the ways lead to from there without forgetting it. */
function spread(
  name: string,
  start: string,
  lasting: boolean,
  marks: ReadonlyMap<string, Set<string>>,
  ways: Ways,
): void {
  const open = [start];
  for (let section = open.pop(); section !== undefined; section = open.pop()) {
    const here = marks.get(section);
    if (here === undefined || here.has(name)) continue;
    here.add(name);
    for (const { id, forgets } of ways.get(section) ?? []) if (lasting || !forgets) open.push(id);
  }
}
