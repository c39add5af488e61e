import type { Fault, Share } from '../../engine/model/fault.ts';
import type { Reading } from '../../engine/model/reading.ts';
import type { CheckSection, Section } from '../../engine/model/section.ts';
import type { Walkable } from '../../engine/paths/walkable.ts';
import { bandsOf } from '../../engine/scale/index.ts';
import type { PossibleBands } from '../../engine/suspects/possible-bands.ts';

/** One band for each reading and one option for each setting. */
export type World = Readonly<Record<string, string>>;

/** Every way in which the names can be, one after the other. */
export const product = (choices: Readonly<Record<string, readonly string[]>>): readonly World[] =>
  Object.entries(choices).reduce<readonly World[]>(
    (worlds, [name, bands]) => worlds.flatMap((world) => bands.map((band) => ({ ...world, [name]: band }))),
    [{}],
  );

const isDerived = ({ from }: Reading): boolean => from !== null;

const inputs = (reading: Reading, { readings }: Walkable): readonly string[] =>
  readings.map(({ id }) => id).filter((id) => JSON.stringify(reading.from).includes(`"name":"${id}"`));

/** Every board there can be: each reading in each band, computed ones as their inputs allow. */
export function allWorlds(tree: Walkable, possible: PossibleBands): readonly World[] {
  const choices = Object.fromEntries([
    ...tree.readings.filter(({ call }) => !call).map((reading) => [reading.id, bandsOf(reading)] as const),
    ...tree.settings.map((setting) => [setting.id, optionsOf(setting)] as const),
  ]);
  return product(choices).filter((world) =>
    tree.readings
      .filter(isDerived)
      .every((reading) => allowed(reading, world, tree, possible).includes(world[reading.id] ?? '')),
  );
}

const optionsOf = (setting: Walkable['settings'][number]): readonly string[] =>
  setting.kind === 'options' ? setting.options.map(({ name }) => name) : [];

const allowed = (
  reading: Reading,
  world: World,
  tree: Walkable,
  possible: PossibleBands,
): readonly string[] =>
  possible(reading, new Map(inputs(reading, tree).map((id) => [id, [world[id] ?? '']])));

/** The first line that fits, or -1. */
export const lineFor = ({ outcomes }: CheckSection, world: World): number =>
  outcomes.findIndex(
    ({ condition }) =>
      condition.kind === 'otherwise' ||
      (condition.kind === 'bands' &&
        Object.entries(condition.bands).every(([name, bands]) => bands.includes(world[name] ?? ''))),
  );

export interface ByHand {
  readonly reached: ReadonlySet<string>;
  /** By check, the lines that are taken. */
  readonly taken: ReadonlyMap<string, ReadonlySet<number>>;
  /** By check, the worlds of its own names that no line takes. */
  readonly left: ReadonlyMap<string, ReadonlySet<string>>;
}

export const ownNames = (section: CheckSection): readonly string[] =>
  [
    ...new Set([
      ...section.readings,
      ...section.outcomes.flatMap(({ condition }) =>
        condition.kind === 'bands' ? Object.keys(condition.bands) : [],
      ),
    ]),
  ].sort();

export const shortened = (world: World, names: readonly string[]): string =>
  names.map((name) => `${name}=${world[name]}`).join(' ');

/** Walks every board through the tree, step by step. Whatever changes the board makes it any other board with the same settings. */
export function walkedByHand(tree: Walkable, possible: PossibleBands): ByHand {
  const worlds = allWorlds(tree, possible);
  const index = new Map(tree.sections.map(({ id }, at) => [id, at]));
  const done = new Set<string>();
  const taken = new Map<string, Set<number>>();
  const left = new Map<string, Set<string>>();
  const open: { readonly section: Section; readonly world: World }[] = [];
  const enter = (from: Section | null, to: string, world: World): void => {
    const section = tree.sections[index.get(to) ?? -1];
    if (section === undefined) return;
    const changed = from !== null && changes(from, section, tree, index);
    const next = changed
      ? worlds.filter((other) => tree.settings.every(({ id }) => other[id] === world[id]))
      : [world];
    for (const each of next) {
      const key = `${to} ${JSON.stringify(each)}`;
      if (done.has(key)) continue;
      done.add(key);
      open.push({ section, world: each });
    }
  };
  const [first] = tree.sections;
  if (first !== undefined) for (const world of worlds) enter(null, first.id, world);
  for (const { section, world } of open) {
    if (section.kind === 'task') enter(section, section.target, world);
    if (section.kind === 'call') enter(section, section.first, world);
    if (section.kind !== 'check') continue;
    const lines = taken.get(section.id) ?? new Set();
    taken.set(section.id, lines);
    const unread = section.outcomes.findIndex(({ condition }) => condition.kind === 'unread');
    const line = lineFor(section, world);
    if (line < 0) {
      const here = left.get(section.id) ?? new Set();
      left.set(section.id, here.add(shortened(world, ownNames(section))));
    }
    for (const way of [line, unread].filter((each) => each >= 0)) {
      lines.add(way);
      enter(section, section.outcomes[way]?.target ?? '', world);
    }
  }
  return { reached: new Set([...done].map((key) => key.split(' ')[0] ?? '')), taken, left };
}

/** Whether the board can be another one behind this step. */
function changes(from: Section, to: Section, tree: Walkable, index: ReadonlyMap<string, number>): boolean {
  if (from.kind === 'task') return true;
  const works = tree.sections.some(({ kind, id }) => kind === 'task' && id.startsWith(`${from.id}.`));
  if (from.kind === 'call' && works) return true;
  return (index.get(to.id) ?? 0) <= (index.get(from.id) ?? 0);
}

/** Each way in which a board with this fault can be, and how often it is. */
export function worldsUnder(
  fault: Fault,
  tree: Walkable,
  possible: PossibleBands,
): readonly { readonly world: World; readonly share: number }[] {
  const byId = new Map(tree.readings.map((reading) => [reading.id, reading]));
  const written = (
    reading: Reading,
  ): { readonly origin: string; readonly shares: readonly Share[] } | null => {
    const own = fault.shows.find((shows) => shows.reading === reading.id);
    if (own !== undefined) return { origin: reading.id, shares: own.shares };
    const like = byId.get(reading.like ?? '');
    return like === undefined ? null : written(like);
  };
  const even = (bands: readonly string[]): readonly Share[] =>
    bands.map((band) => ({ band, share: 1 / bands.length }));
  const atRest = (reading: Reading): readonly Share[] =>
    even(fault.rest === 'unknown' || reading.normal === 'any' ? bandsOf(reading) : reading.normal);
  const missing = (reading: Reading, world: World): boolean =>
    reading.needs.some(({ reading: id, bands }) => {
      const needed = byId.get(id);
      if (needed === undefined) return false;
      if (isDerived(needed) || written(needed) !== null) return !bands.includes(world[id] ?? '');
      const met =
        fault.rest === 'unknown' ||
        needed.normal === 'any' ||
        needed.normal.some((band) => bands.includes(band));
      return !met || missing(needed, world);
    });
  const sharesOf = (reading: Reading, world: World): readonly Share[] => {
    const said = written(reading);
    if (isDerived(reading)) {
      const bands = allowed(reading, world, tree, possible);
      if (said === null) return even(bands);
      const fit = said.shares.filter(({ band }) => bands.includes(band));
      const sum = fit.reduce((total, { share }) => total + share, 0);
      return sum === 0 ? said.shares : fit.map(({ band, share }) => ({ band, share: share / sum }));
    }
    if (said !== null) {
      const tied = said.origin === reading.id ? undefined : world[said.origin];
      return tied === undefined ? said.shares : [{ band: tied, share: 1 }];
    }
    if (!missing(reading, world)) return atRest(reading);
    return reading.hidden === null ? even(bandsOf(reading)) : [{ band: reading.hidden, share: 1 }];
  };
  // Every reading of a random tree rests on earlier ones only.
  let worlds: readonly { readonly world: World; readonly share: number }[] = [{ world: {}, share: 1 }];
  for (const reading of tree.readings) {
    worlds = worlds.flatMap(({ world, share }) =>
      sharesOf(reading, world).map((one) => ({
        world: { ...world, [reading.id]: one.band },
        share: share * one.share,
      })),
    );
  }
  for (const setting of tree.settings) {
    const made = fault.sets[setting.id];
    const bands = typeof made === 'string' ? [made] : optionsOf(setting);
    worlds = worlds.flatMap(({ world, share }) =>
      bands.map((band) => ({ world: { ...world, [setting.id]: band }, share: share / bands.length })),
    );
  }
  const symptom = worlds.filter(({ world }) =>
    tree.given.every(({ reading, band }) => world[reading] === band),
  );
  const sum = symptom.reduce((total, { share }) => total + share, 0);
  return symptom.map(({ world, share }) => ({ world, share: share / sum }));
}

/** How a walk of one board ends: `arrived`, `stop`, `round`, …, and at which section. */
export function endByHand(fault: Fault, tree: Walkable, world: World): string {
  const byId = new Map(tree.sections.map((section) => [section.id, section]));
  const readings = new Map(tree.readings.map((reading) => [reading.id, reading]));
  const met = (needs: readonly { readonly reading: string; readonly bands: readonly string[] }[]): boolean =>
    needs.every(({ reading, bands }) => bands.includes(world[reading] ?? ''));
  let cards = 'in';
  let section = tree.sections[0];
  const passed = new Set<string>();
  while (section !== undefined) {
    const here = `${section.id} ${cards}`;
    if (passed.has(here)) return 'round';
    passed.add(here);
    const { id } = section;
    if (section.kind === 'stop' || section.kind === 'hand-over') return `${section.kind} ${id}`;
    if (section.kind === 'fault') {
      if (!section.remedies.some((remedy) => remedy.fault === fault.id)) return `other-fault ${id}`;
      return met([...section.onlyIf, ...fault.onlyIf]) ? `arrived ${id}` : `held ${id}`;
    }
    if (section.kind === 'task') {
      if (!met(section.onlyIf)) return `held ${id}`;
      cards = section.sets.cards ?? cards;
      section = byId.get(section.target);
    } else if (section.kind === 'call') {
      const said = fault.shows.some(({ reading }) => reading === id);
      const end = section.ends.find((each) => each.end === world[id]);
      section = byId.get(said ? (end?.target ?? '') : section.first);
    } else {
      const taken = section.readings.map((each) => readings.get(each));
      if (taken.some((each) => (each?.when.cards ?? cards) !== cards)) return `held ${id}`;
      if (!met(taken.flatMap((each) => each?.onlyIf ?? []))) return `held ${id}`;
      const line = lineFor(section, world);
      if (line < 0) return `nowhere ${id}`;
      section = byId.get(section.outcomes[line]?.target ?? '');
    }
  }
  return 'nowhere';
}
