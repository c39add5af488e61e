import type { Fault, Share } from '../../engine/model/fault.ts';
import type { Need, Reading } from '../../engine/model/reading.ts';
import type { Condition, Outcome, Section } from '../../engine/model/section.ts';
import type { Setting } from '../../engine/model/setting.ts';
import type { Walkable } from '../../engine/paths/walkable.ts';
import { bandsOf } from '../../engine/scale/index.ts';
import type { PossibleBands } from '../../engine/suspects/possible-bands.ts';
import { type Dice, dice } from './dice.ts';
import { plainReading } from './plain-reading.ts';

/** A tree with everything that decides a walk, small enough to be gone through by hand. */
export interface RandomTree {
  readonly tree: Walkable;
  /** What its derived readings allow: a table thrown with the tree. */
  readonly possible: PossibleBands;
}

const bandNames = ['none', 'low', 'good'] as const;

/** Checks with few and with several readings, tasks, calls with their sections expanded, loops, dead ends, settings with options, readings computed
 *  from others or like others, hidden ones, conditions of the board, and faults that show all of that. */
export function randomTree(seed: number): RandomTree {
  const die = dice(seed);
  const settings = die.chance(0.5) ? [setting('cpu')] : [];
  const readings = randomReadings(die);
  const faults = Array.from({ length: 1 + die.upTo(3) }, (_, at) =>
    randomFault(`f${at}`, readings, settings, die),
  );
  const sections = randomSections(readings, settings, faults, die);
  const [asked] = readings;
  const given =
    die.chance(0.25) && asked !== undefined && asked.from === null
      ? [{ reading: asked.id, band: die.pick(bandNames.slice(0, bandsOf(asked).length) as ['none']) }]
      : [];
  const calls = sections.flatMap((section) => (section.kind === 'call' ? [callReading(section.id)] : []));
  const all = [...readings, ...calls];
  return {
    tree: {
      given,
      conditions: [{ id: 'cards', values: ['in', 'out'] }],
      settings,
      readings: all,
      faults: faults.map((fault) => withCalls(fault, calls, die)),
      sections,
    },
    possible: randomLimits(seed),
  };
}

const options = (names: readonly string[]) => names.map((name) => ({ name, means: null }));

const setting = (id: string): Setting => ({
  kind: 'options',
  id,
  is: id,
  options: options(['single', 'dual']),
  usual: null,
});

const callReading = (id: string): Reading => ({
  ...plainReading(id, { kind: 'options', options: options(['found', 'not-found']) }, 'any'),
  call: true,
});

function randomReadings(die: Dice): readonly Reading[] {
  const readings: Reading[] = [];
  const count = 2 + die.upTo(3);
  for (let at = 0; at < count; at += 1) {
    const bands = die.chance(0.5) ? ['none', 'good'] : [...bandNames];
    const normal = die.chance(0.15) ? 'any' : die.chance(0.2) ? bands.slice(1) : ['good'];
    const plain = plainReading(`r${at}`, { kind: 'options', options: options(bands) }, normal);
    const needs = readings
      .filter(({ from }) => die.chance(from === null ? 0.25 : 0.8))
      .map((needed) => needOf(needed, die));
    const hidden = needs.length === 0 ? null : die.chance(0.8) ? 'none' : null;
    const onlyIf = readings.filter(() => die.chance(0.08)).map((needed) => needOf(needed, die));
    const when: Readonly<Record<string, string>> = die.chance(0.1) ? { cards: die.pick(['in', 'out']) } : {};
    const [first] = readings;
    const like = first !== undefined && die.chance(0.2) ? first : null;
    const inputs = readings.filter(() => die.chance(0.7));
    if (like !== null && like.from === null) {
      readings.push({ ...like, id: `r${at}`, like: like.id, when, onlyIf });
    } else if (inputs.length > 0 && die.chance(0.4)) {
      readings.push({
        ...plain,
        normal: ['good'],
        from: { kind: 'call', name: 'min', arguments: inputs.map(({ id }) => ({ kind: 'name', name: id })) },
      });
    } else {
      readings.push({ ...plain, needs, hidden, onlyIf, when });
    }
  }
  return readings;
}

const needOf = (needed: Reading, die: Dice): Need => ({
  reading: needed.id,
  bands: die.some(bandsOf(needed)),
});

function randomFault(
  id: string,
  readings: readonly Reading[],
  settings: readonly Setting[],
  die: Dice,
): Fault {
  const shows = readings
    .filter(() => die.chance(0.45))
    .map((reading) => ({ reading: reading.id, shares: randomShares(die.some(bandsOf(reading)), die) }));
  return {
    id,
    is: id,
    weight: 1,
    weights: {},
    shows,
    rest: die.chance(0.15) ? 'unknown' : 'normal',
    comes: 'always',
    sets: settings.length > 0 && die.chance(0.15) ? { cpu: 'dual' } : {},
    onlyIf: readings.filter(() => die.chance(0.05)).map((needed) => needOf(needed, die)),
    which: null,
    parts: [],
    tools: [],
    minutes: null,
    source: null,
  };
}

function randomShares(bands: readonly string[], die: Dice): readonly Share[] {
  const weights = bands.map((band) => ({ band, weight: 1 + die.upTo(4) }));
  const sum = weights.reduce((total, { weight }) => total + weight, 0);
  return weights.map(({ band, weight }) => ({ band, share: weight / sum }));
}

const withCalls = (fault: Fault, calls: readonly Reading[], die: Dice): Fault => ({
  ...fault,
  shows: [
    ...fault.shows,
    ...calls
      .filter(() => die.chance(0.3))
      .map((call) => ({ reading: call.id, shares: randomShares(die.some(bandsOf(call)), die) })),
  ],
});

function randomSections(
  readings: readonly Reading[],
  settings: readonly Setting[],
  faults: readonly Fault[],
  die: Dice,
): readonly Section[] {
  const names = Array.from({ length: 3 + die.upTo(6) }, (_, at) => `s${at}`);
  const homes = faults.map(({ id }) => `home-${id}`);
  const anywhere = ['stop', 'away', ...names, ...homes] as const;
  const target = (at: number): string => {
    const below = ['stop', ...names.slice(at + 1), ...homes] as const;
    return die.chance(0.8) ? die.pick(below) : die.pick(anywhere);
  };
  const work = names.flatMap((id, at): readonly Section[] => {
    if (die.chance(0.12)) return [task(id, target(at), readings, die)];
    if (die.chance(0.12)) return call(id, () => target(at), readings, settings, die);
    return [check(id, () => target(at), readings, settings, die)];
  });
  return [
    ...work,
    ...faults.map(
      ({ id }): Section => ({
        ...base(`home-${id}`),
        kind: 'fault',
        onlyIf: [],
        remedies: [{ fault: id, hazards: [], blocks: [] }],
        proof: [],
        proofTries: {},
      }),
    ),
    { ...base('stop'), kind: 'stop', reason: [] },
    { ...base('away'), kind: 'hand-over', tree: 'other' },
  ];
}

const base = (id: string) => ({ id, title: id.toUpperCase(), hazards: [], blocks: [] });

const task = (id: string, to: string, readings: readonly Reading[], die: Dice): Section => ({
  ...base(id),
  kind: 'task',
  task: [],
  sets: die.chance(0.4) ? { cards: die.pick(['in', 'out']) } : {},
  onlyIf: readings.filter(() => die.chance(0.05)).map((needed) => needOf(needed, die)),
  minutes: 1,
  wait: 0,
  target: to,
});

function check(
  id: string,
  to: () => string,
  readings: readonly Reading[],
  settings: readonly Setting[],
  die: Dice,
): Section {
  const read = die.some(readings).slice(0, 3);
  const subjects = [
    ...read.map((reading) => ({ id: reading.id, bands: bandsOf(reading) })),
    ...settings.map((one) => ({ id: one.id, bands: ['single', 'dual'] })),
  ];
  const lines = Array.from(
    { length: 1 + die.upTo(3) },
    (): Outcome => outcome(conditionOn(subjects, die), to()),
  );
  const last = die.chance(0.7) ? [outcome({ kind: 'otherwise' }, to())] : [];
  const unread = die.chance(0.2) ? [outcome({ kind: 'unread' }, to())] : [];
  return {
    ...base(id),
    kind: 'check',
    readings: read.map((reading) => reading.id),
    outcomes: [...lines, ...unread, ...last],
  };
}

const outcome = (condition: Condition, target: string): Outcome => ({
  condition,
  written: JSON.stringify(condition),
  target,
  remark: [],
});

function conditionOn(
  subjects: readonly { readonly id: string; readonly bands: readonly string[] }[],
  die: Dice,
): Condition {
  const named = die.some(subjects).slice(0, 2);
  return { kind: 'bands', bands: Object.fromEntries(named.map(({ id, bands }) => [id, die.some(bands)])) };
}

/** A call of a procedure of two or three sections; what would be its ends leads to the caller's targets. */
function call(
  id: string,
  to: () => string,
  readings: readonly Reading[],
  settings: readonly Setting[],
  die: Dice,
): readonly Section[] {
  const ends = [
    { end: 'found', target: to(), remark: [] },
    { end: 'not-found', target: to(), remark: [] },
  ] as const;
  const inner = (): string => die.pick([`${id}.b`, ends[0].target, ends[1].target]);
  return [
    { ...base(id), kind: 'call', procedure: 'p', procedureTitle: 'P', given: [], first: `${id}.a`, ends },
    die.chance(0.4)
      ? task(`${id}.a`, inner(), readings, die)
      : check(`${id}.a`, inner, readings, settings, die),
    check(`${id}.b`, () => die.pick([ends[0].target, ends[1].target]), readings, settings, die),
  ];
}

/** For each combination of input bands some bands, never none; the same combination always the same. */
const randomLimits =
  (seed: number): PossibleBands =>
  (derived, inputs) => {
    const combinations = [...inputs].reduce<readonly string[]>(
      (keys, [id, bands]) => keys.flatMap((key) => bands.map((band) => `${key} ${id}=${band}`)),
      [''],
    );
    const allowed = new Set(combinations.flatMap((key) => dice(hash(seed, key)).some(bandsOf(derived))));
    return bandsOf(derived).filter((band) => allowed.has(band));
  };

const hash = (seed: number, text: string): number =>
  [...text].reduce(
    (mixed, letter) => Math.imul(mixed ^ (letter.codePointAt(0) ?? 0), 0x01000193),
    seed ^ 0x811c9dc5,
  );
