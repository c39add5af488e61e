import type { Given } from '../model/compiled-tree.ts';
import type { Fault } from '../model/fault.ts';
import { type Odds, usualOdds } from '../model/odds.ts';
import type { SettingValues } from '../model/present.ts';
import type { Reading } from '../model/reading.ts';
import type { Setting, SettingValue } from '../model/setting.ts';
import { settingsOf } from '../scale/index.ts';
import { Answers, type Ground } from './answers.ts';
import { asBrought } from './as-brought.ts';
import type { Hypothesis } from './belief.ts';
import { inputsOf } from './inputs-of.ts';
import { possibleAt } from './possible-at.ts';
import type { PossibleBands } from './possible-bands.ts';
import { type Shape, shapeOf } from './shape.ts';
import { healthy, unlistedFault } from './unlisted-fault.ts';

/** What suspects are weighed with; a compiled tree is one. */
export interface BeliefTree {
  readonly readings: readonly Reading[];
  readonly faults: readonly Fault[];
  readonly settings?: readonly Setting[];
  readonly odds?: Odds;
  /** What a board that has none of the faults shows as well. */
  readonly given?: readonly Given[];
}

/** Whoever answers, by place: the tree's faults in their order, then these two. */
export const unlistedAnswerer = (tree: BeliefTree): number => tree.faults.length;
export const healthyAnswerer = (tree: BeliefTree): number => tree.faults.length + 1;

/** All that follows from a tree and the settings of the board on the bench, whatever is read there. */
export class Weighing {
  readonly tree: BeliefTree;
  readonly odds: Odds;
  readonly ground: Ground;
  /** What derived readings can come out in where their inputs are read. */
  readonly allowed: PossibleBands;
  /** The place of a fault among those who answer. */
  readonly answererOf: ReadonlyMap<string, number>;
  readonly #values: SettingValues;
  readonly #answers: (Answers | undefined)[] = [];
  readonly #aloneTables: (readonly (Float64Array | null)[] | undefined)[] = [];
  readonly #inputs: (readonly number[] | undefined)[] = [];

  constructor(tree: BeliefTree, settings: SettingValues) {
    const { readings } = tree;
    this.tree = tree;
    this.odds = tree.odds ?? usualOdds;
    this.ground = {
      readings,
      byId: new Map(readings.map((reading) => [reading.id, reading])),
      places: new Map(readings.map(({ id }, place) => [id, place])),
      shapes: readings.map(shapeOf),
    };
    this.answererOf = new Map(tree.faults.map(({ id }, place) => [id, place]));
    const usual = (tree.settings ?? []).map((setting) => [setting.id, setting.usual] as const);
    this.#values = new Map([...usual, ...settings]);
    this.allowed = possibleAt(this.ground.byId, this.#values);
  }

  answers(answerer: number): Answers {
    const before = this.#answers[answerer];
    if (before !== undefined) return before;
    const fault = this.#faultOf(answerer);
    const values = new Map([...this.#values, ...Object.entries(fault.sets)]);
    const made = new Answers(this.ground, fault, possibleAt(this.ground.byId, values));
    this.#answers[answerer] = made;
    return made;
  }

  shape(reading: number): Shape {
    const shape = this.ground.shapes[reading];
    if (shape === undefined) throw new Error('expected every reading to have a shape');
    return shape;
  }

  /** What everybody does in a reading, by answerer; null where it comes out together with others. */
  aloneTables(reading: number): readonly (Float64Array | null)[] {
    const before = this.#aloneTables[reading];
    if (before !== undefined) return before;
    const made = Array.from({ length: healthyAnswerer(this.tree) + 1 }, (_, answerer) => {
      const answers = this.answers(answerer);
      return answers.isAlone(reading) ? answers.table(reading) : null;
    });
    this.#aloneTables[reading] = made;
    return made;
  }

  isSometimes(answerer: number): boolean {
    return this.tree.faults[answerer]?.comes === 'sometimes';
  }

  /** The readings that a derived reading is computed from, by place. */
  inputs(reading: number): readonly number[] {
    const before = this.#inputs[reading];
    if (before !== undefined) return before;
    const found = this.tree.readings[reading];
    const inputs = found === undefined ? [] : inputsOf(found, this.tree);
    const places = inputs.flatMap((id) => this.ground.places.get(id) ?? []);
    this.#inputs[reading] = places;
    return places;
  }

  /** Who answers under a hypothesis. */
  answerersOf({ faults }: Hypothesis): readonly number[] {
    if (faults.length === 0) return [unlistedAnswerer(this.tree)];
    return faults.map((fault) => this.tree.faults.indexOf(fault));
  }

  #faultOf(answerer: number): Fault {
    const { tree, odds } = this;
    const fault = tree.faults[answerer];
    if (fault !== undefined) return asBrought(fault, tree);
    return answerer === unlistedAnswerer(tree)
      ? unlistedFault(tree.readings, tree.given ?? [], odds)
      : healthy;
  }
}

const known = new WeakMap<BeliefTree, Map<string, Weighing>>();

/** The same for the same tree and settings, so that one belief of a job after another is cheap. Only what computed readings rest on
 *  is told apart. */
export function weighingOf(tree: BeliefTree, settings: SettingValues = new Map()): Weighing {
  const ofTree = known.get(tree) ?? new Map<string, Weighing>();
  known.set(tree, ofTree);
  const told = [...settings].filter(([id, value]) => restsOn(tree, id) && !isUsual(tree, id, value));
  const key = JSON.stringify(told.sort(([a], [b]) => (a < b ? -1 : 1)));
  const weighing = ofTree.get(key) ?? new Weighing(tree, new Map(told));
  ofTree.set(key, weighing);
  return weighing;
}

const rested = new WeakMap<BeliefTree, ReadonlySet<string>>();

/** Whether a computed reading, or anything that it is computed from, rests on a setting. */
function restsOn(tree: BeliefTree, setting: string): boolean {
  const names = rested.get(tree) ?? namesBehind(tree);
  rested.set(tree, names);
  return names.has(setting);
}

function namesBehind({ readings }: BeliefTree): ReadonlySet<string> {
  const names = new Set(readings.filter(({ from }) => from !== null).flatMap(settingsOf));
  const byId = new Map(readings.map((reading) => [reading.id, reading]));
  for (const name of names) {
    const behind = byId.get(name);
    if (behind !== undefined) for (const each of settingsOf(behind)) names.add(each);
  }
  return names;
}

function isUsual({ settings = [] }: BeliefTree, id: string, value: SettingValue | null): boolean {
  const usual = settings.find((setting) => setting.id === id)?.usual ?? null;
  if (value === null || usual === null || typeof value === 'string' || typeof usual === 'string') {
    return value === usual;
  }
  return value.value === usual.value;
}
