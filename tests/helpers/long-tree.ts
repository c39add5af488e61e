import type { LinkedTree } from '../../engine/link/linked-tree.ts';
import type { Fault } from '../../engine/model/fault.ts';
import type { Reading } from '../../engine/model/reading.ts';
import type { Condition, Outcome, Section } from '../../engine/model/section.ts';
import type { Setting } from '../../engine/model/setting.ts';
import { healthy } from '../../engine/suspects/unlisted-fault.ts';
import { dice } from './dice.ts';
import { plainReading } from './plain-reading.ts';

/**
 * A tree as long as a thorough author writes one for a whole board: areas (supply, clocks, reset, memory …) of ten sections each. In an
 * area a first check looks at two signals and goes deeper where one is wrong; four faults lie behind it. Rails are read again all over the
 * tree, a board comes in two kinds, cards are pulled now and then, some signals are computed, some faults show anything.
 * The same number gives the same tree.
 */
export function longTree(areas: number): LinkedTree {
  const die = dice(586);
  const rails = Array.from({ length: 6 }, (_, at) => rail(`rail_${at}`));
  const readings: Reading[] = [...rails];
  const faults: Fault[] = [];
  const sections: Section[] = [];
  for (let area = 0; area < areas; area += 1) {
    const here = area === 0 ? rails : readings.slice(-8);
    const needs = here.slice(0, 2).map(({ id }) => ({ reading: id, bands: ['good', 'high'] }));
    const signal = (name: string): Reading => ({ ...rail(`${name}_${area}`), needs, hidden: 'none' });
    const [level, swing, detail, look] = [signal('level'), signal('swing'), signal('detail'), signal('look')];
    const both: Reading = {
      ...plainReading(`both_${area}`, { kind: 'options', options: options(['yes', 'no']) }, ['yes']),
      from: { kind: 'compare', operator: '>', left: name(level.id), right: name(swing.id) },
    };
    readings.push(level, swing, detail, look, ...(area % 5 === 0 ? [both] : []));
    const next = area + 1 < areas ? `area-${area + 1}` : 'stop';
    const again = die.pick(['rail_0', 'rail_1', 'rail_2', 'rail_3', 'rail_4', 'rail_5']);
    const id = (part: string): string => `${part}-${area}`;
    sections.push(
      check(
        area === 0 ? 'area-0' : id('area'),
        [level.id, swing.id],
        [
          line({ [level.id]: ['good'], [swing.id]: ['good'] }, next),
          line({ [level.id]: ['none', 'low'] }, id('deep')),
          line({ [swing.id]: ['none', 'low'] }, id('pull')),
          otherwise(id('kind')),
        ],
      ),
      check(id('deep'), area % 5 === 0 ? [detail.id, again, both.id] : [detail.id, again], [
        line({ [again]: ['none', 'low'] }, id('first')),
        ...(area % 5 === 0 ? [line({ [both.id]: ['no'], [detail.id]: ['low'] }, id('second'))] : []),
        line({ [detail.id]: ['good'] }, id('look')),
        otherwise(id('first')),
      ]),
      task(id('pull'), id('look'), area % 3 === 0 ? { cards: 'out' } : {}),
      check(
        id('look'),
        [look.id, level.id],
        [
          line({ [look.id]: ['none'] }, id('second')),
          line({ [level.id]: ['high'] }, id('kind')),
          line({ [look.id]: ['good'] }, die.chance(0.2) ? 'area-0' : id('third')),
          otherwise(id('fourth')),
        ],
      ),
      check(
        id('kind'),
        [again, swing.id],
        [
          line({ cpu: ['single'], [again]: ['good'] }, id('third')),
          line({ [swing.id]: ['good'] }, next),
          otherwise(id('fourth')),
        ],
      ),
      ...(['first', 'second', 'third', 'fourth'] as const).map((part) => home(id(part), `${part}_${area}`)),
      task(id('note'), next, {}),
    );
    faults.push(
      fault(`first_${area}`, { [level.id]: ['none', 'low'], [detail.id]: ['none', 'high'] }),
      fault(`second_${area}`, { [level.id]: ['good'], [swing.id]: ['low', 'none'], [look.id]: ['none'] }),
      fault(`third_${area}`, { [level.id]: ['low'], [detail.id]: ['good'], [again]: ['low', 'good'] }),
      {
        ...fault(`fourth_${area}`, { [swing.id]: ['high', 'low'] }),
        rest: area % 6 === 0 ? 'unknown' : 'normal',
      },
    );
  }
  sections.push({ ...base('stop'), kind: 'stop', reason: [] });
  return linked(readings, faults, sections);
}

const options = (names: readonly string[]) => names.map((each) => ({ name: each, means: null }));
const name = (id: string) => ({ kind: 'name', name: id }) as const;
const volts = (value: string) => ({ kind: 'quantity', value, unit: 'V' }) as const;

const rail = (id: string): Reading =>
  plainReading(
    id,
    {
      kind: 'quantity',
      unit: 'V',
      scale: {
        written: 'none < 0.5 V < low < 4.75 V < good < 5.25 V < high',
        bands: ['none', 'low', 'good', 'high'],
        limits: [volts('1/2'), volts('19/4'), volts('21/4')],
        byMagnitude: false,
        nominal: null,
      },
    },
    ['good'],
  );

const base = (id: string) => ({ id, title: id, hazards: [], blocks: [] });

const check = (id: string, readings: readonly string[], outcomes: readonly Outcome[]): Section => ({
  ...base(id),
  kind: 'check',
  readings,
  outcomes,
});

const task = (id: string, target: string, sets: Readonly<Record<string, string>>): Section => ({
  ...base(id),
  kind: 'task',
  task: [],
  sets,
  onlyIf: [],
  minutes: 1,
  wait: 0,
  target,
});

const home = (id: string, of: string): Section => ({
  ...base(id),
  kind: 'fault',
  onlyIf: [],
  remedies: [{ fault: of, hazards: [], blocks: [] }],
  proof: [],
  proofTries: {},
});

const outcome = (condition: Condition, target: string): Outcome => ({
  condition,
  written: '',
  target,
  remark: [],
});
const line = (bands: Readonly<Record<string, readonly string[]>>, target: string): Outcome =>
  outcome({ kind: 'bands', bands }, target);
const otherwise = (target: string): Outcome => outcome({ kind: 'otherwise' }, target);

const fault = (id: string, shows: Readonly<Record<string, readonly string[]>>): Fault => ({
  ...healthy,
  id,
  is: id,
  weight: 1,
  shows: Object.entries(shows).map(([reading, bands]) => ({
    reading,
    shares: bands.map((band) => ({ band, share: 1 / bands.length })),
  })),
});

const cpu: Setting = {
  kind: 'options',
  id: 'cpu',
  is: 'Supply of the CPU',
  options: options(['single', 'dual']),
  usual: null,
};

/** Placed nowhere: only what can be walked matters. */
function linked(
  readings: readonly Reading[],
  faults: readonly Fault[],
  sections: readonly Section[],
): LinkedTree {
  const nowhere = { from: 0, to: 0 };
  return {
    facts: {
      title: 'A long tree',
      symptom: 'Nothing moves',
      boards: ['586'],
      minutes: 1,
      given: [],
      conditions: [{ id: 'cards', values: ['in', 'out'] }],
      settings: [cpu],
      readings,
      faults,
      foreign: { settings: new Set(), readings: new Set(), faults: new Set() },
      tools: null,
    },
    placeOf: () => nowhere,
    hazards: [],
    blocks: [],
    sections: sections.map((section) => ({
      section,
      titleSpan: nowhere,
      leadSpan: nowhere,
      outcomeSpans: section.kind === 'check' ? section.outcomes.map(() => nowhere) : [],
      faultSpans: section.kind === 'fault' ? [nowhere] : [],
      risks: [],
      sound: true,
    })),
    open: new Set(),
    settingsUsed: new Set(['cpu']),
    foreign: new Set(),
  };
}
