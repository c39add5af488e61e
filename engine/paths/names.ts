import type { Reading } from '../model/reading.ts';
import { bandsOf } from '../scale/index.ts';
import { inputsOf } from '../suspects/inputs-of.ts';
import type { PossibleBands } from '../suspects/possible-bands.ts';
import { familiesOf } from './families-of.ts';
import type { Walkable } from './walkable.ts';

/** One class of bands: what no condition of the tree tells apart is one. */
export type Class = readonly [string, ...string[]];

/** A reading or a setting with options, as the path analysis sees it. Sets of classes are bits of a `bigint`:
 *
 *      none, low | good | high        0b001 none or low      0b110 good or high
 */
export interface Name {
  readonly id: string;
  readonly at: number;
  /** A setting stays what it is along a whole walk. */
  readonly setting: boolean;
  readonly classes: readonly Class[];
  readonly all: bigint;
  /** The reading, where it is computed from others. */
  readonly derived: { readonly reading: Reading; readonly inputs: readonly string[] } | null;
}

export interface Names {
  readonly list: readonly Name[];
  readonly byId: ReadonlyMap<string, Name>;
  /** For each name those that it is computed with, itself included. */
  readonly families: ReadonlyMap<string, readonly string[]>;
  readonly possible: PossibleBands;
}

/** Every name of a tree that conditions can speak of. */
export function namesOf(tree: Walkable, possible: PossibleBands): Names {
  const told = toldApart(tree);
  const derivedFrom = new Map(
    tree.readings.filter(({ from }) => from !== null).map((reading) => [reading.id, inputsOf(reading, tree)]),
  );
  const whole = new Set([...derivedFrom].flatMap(([id, inputs]) => [id, ...inputs]));
  const bands = [
    ...tree.readings.map((reading) => ({ id: reading.id, bands: bandsOf(reading), reading })),
    ...tree.settings.flatMap((setting) =>
      setting.kind === 'options'
        ? [{ id: setting.id, bands: setting.options.map(({ name }) => name), reading: null }]
        : [],
    ),
  ];
  const list = bands.map(({ id, bands: all, reading }, at): Name => {
    const classes = whole.has(id) ? all.map((band): Class => [band]) : classesOf(all, told.get(id) ?? []);
    const inputs = derivedFrom.get(id);
    return {
      id,
      at,
      setting: reading === null,
      classes,
      all: (1n << BigInt(classes.length)) - 1n,
      derived: reading !== null && inputs !== undefined ? { reading, inputs } : null,
    };
  });
  return { list, byId: new Map(list.map((name) => [name.id, name])), families: familiesOf(list), possible };
}

/** The sets of bands that conditions ask for, by name. */
function toldApart({ sections }: Walkable): ReadonlyMap<string, readonly (readonly string[])[]> {
  const told = new Map<string, (readonly string[])[]>();
  for (const section of sections) {
    if (section.kind !== 'check') continue;
    for (const { condition } of section.outcomes) {
      if (condition.kind !== 'bands') continue;
      for (const [id, bands] of Object.entries(condition.bands))
        told.set(id, [...(told.get(id) ?? []), bands]);
    }
  }
  return told;
}

function classesOf(bands: readonly string[], told: readonly (readonly string[])[]): readonly Class[] {
  const classes = new Map<string, [string, ...string[]]>();
  for (const band of bands) {
    const mark = told.map((set) => (set.includes(band) ? '1' : '0')).join('');
    const known = classes.get(mark);
    if (known === undefined) classes.set(mark, [band]);
    else known.push(band);
  }
  return [...classes.values()];
}

/** The classes that hold any of `bands`. */
export const setOf = ({ classes }: Name, bands: readonly string[]): bigint =>
  classes.reduce(
    (set, one, at) => (one.some((band) => bands.includes(band)) ? set | (1n << BigInt(at)) : set),
    0n,
  );

/** The bands of some classes. */
export const bandsIn = ({ classes }: Name, set: bigint): readonly string[] =>
  classes.flatMap((one, at) => ((set >> BigInt(at)) & 1n ? one : []));
