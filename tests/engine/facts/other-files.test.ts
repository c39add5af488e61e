import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type ForeignFacts, noForeignFacts } from '../../../engine/model/foreign-facts.ts';
import { plainReading } from '../../helpers/plain-reading.ts';
import { factsOf, procedureOf, sharedOf } from './facts-of.ts';

const common = sharedOf(`conditions: { cards: [in, out] }
settings:
  bus: { is: Bus, unit: MHz, usual: 66 MHz }
readings:
  v5: { is: Five, unit: V, scale: none < 1 V < low < 4.75 V < good, normal: good, source: s }
  lamp: { is: Lamp, options: [on, off], normal: on, source: s }
faults:
  fuse: { is: Fuse, shows: { v5: none }, source: s }
`);

/** What stands for the ends of a call among the readings. */
const callReading = (id: string, ends: readonly string[]) => {
  const options = ends.map((name) => ({ name, means: null }));
  return { ...plainReading(id, { kind: 'options', options }, 'any'), call: true };
};

const tree = (yaml: string, foreign: ForeignFacts = common.facts) =>
  factsOf(`uses: [common.md]\n${yaml}`, undefined, foreign);

describe('facts from other files', () => {
  test('come first, are named freely, and are known as foreign', () => {
    expect(common.told).toEqual([]);
    const { facts, told } = tree(`given: { lamp: off }
readings:
  clk: { is: Clock, unit: MHz, expect: bus ± 1 %, needs: [v5], after: [lamp], only if: [v5], when: cards out, source: s }
  d: { is: d, from: clk / bus, scale: a < 1 < b, normal: b, source: s }
faults:
  short: { is: Short, shows: { v5: none, clk: low }, sets: { bus: 50 MHz }, only if: [lamp] }
`);
    expect(told).toEqual([]);
    expect(facts.settings.map(({ id }) => id)).toEqual(['bus']);
    expect(facts.readings.map(({ id }) => id)).toEqual(['v5', 'lamp', 'clk', 'd']);
    expect(facts.faults.map(({ id }) => id)).toEqual(['fuse', 'short']);
    expect(facts.conditions).toEqual([{ id: 'cards', values: ['in', 'out'] }]);
    expect([...facts.foreign.readings]).toEqual(['v5', 'lamp']);
    expect([...facts.foreign.settings]).toEqual(['bus']);
    expect([...facts.foreign.faults]).toEqual(['fuse']);
    expect(facts.readings[2]?.hidden).toBe('low');
  });

  test('are enough for a tree that declares nothing itself', () => {
    expect(tree('').told).toEqual([]);
    expect(factsOf('').told.sort()).toEqual(['missing-key: format: 1', 'missing-key: format: 1']);
  });

  test('may be declared again in the same words, and then stand there once', () => {
    const { facts, told } = tree(`conditions: { cards: [in, out] }
settings:
  bus: { usual: 66 MHz, unit: MHz, is: Bus }
readings:
  lamp: { is: Lamp, normal: on, options: [on, off], source: s }
faults:
  fuse: { is: Fuse, shows: { v5: none }, source: s }
`);
    expect(told).toEqual([]);
    expect(facts.readings.map(({ id }) => id)).toEqual(['v5', 'lamp']);
    expect(facts.faults).toHaveLength(1);
  });

  test.each([
    ['conditions: { cards: [out, in] }', ['name-clash: cards']],
    ['settings:\n  bus: { is: Bus, unit: MHz, usual: 50 MHz }', ['name-clash: bus']],
    ['settings:\n  v5: { is: x, unit: V }', ['name-clash: v5']],
    ['readings:\n  lamp: { is: Lamp, options: [on, off, dim], normal: on, source: s }', ['name-clash: lamp']],
    ['readings:\n  bus: { is: Lamp, options: [on, off], normal: on, source: s }', ['name-clash: bus']],
    ['faults:\n  fuse: { is: Other }', ['name-clash: fuse']],
  ])('clash with what says something else: %j', (yaml, told) => {
    const found = tree(yaml);
    expect(found.told).toEqual(told);
    expect(found.facts.readings.filter(({ id }) => id === 'lamp')).toHaveLength(1);
  });

  test('are no reason to speak of circles that are not this file’s', () => {
    const [v5, lamp] = common.facts.readings;
    if (v5 === undefined || lamp === undefined) throw new Error('Expected two readings');
    const foreign = {
      ...common.facts,
      readings: [
        { ...v5, after: ['lamp'] },
        { ...lamp, after: ['v5'] },
      ],
    };
    expect(tree('', foreign).told).toEqual([]);
    expect(tree('readings:\n  r: { like: v5 }', foreign).told).toEqual([]);
  });

  test('include the ends of calls and the local readings of procedures, by the names they have', () => {
    const [, lamp] = common.facts.readings;
    if (lamp === undefined) throw new Error('Expected a reading');
    const foreign = {
      ...noForeignFacts,
      readings: [callReading('find-the-short', ['found', 'not-found']), { ...lamp, id: 'r_gnd of v5, 10 Ω' }],
    };
    const { facts, told } = tree(
      'faults:\n  f:\n    is: f\n    shows:\n      find-the-short: found\n      r_gnd of v5, 10 Ω: off\n',
      foreign,
    );
    expect(told).toEqual([]);
    expect(facts.faults[0]?.shows.map(({ reading }) => reading)).toEqual([
      'find-the-short',
      'r_gnd of v5, 10 Ω',
    ]);
    expect(tree('faults:\n  f: { is: f, shows: { find-the-short: fond } }', foreign).told).toEqual([
      'no-band-named: fond',
    ]);
  });

  test('a shared file hands on what it uses itself, and knows any board class', () => {
    const second = sharedOf(
      'uses: [common.md]\nreadings:\n  v5_bare: { like: v5, when: cards out }\nfaults:\n  g: { is: g, weight: { 386: 2, 486: 4 }, source: s }\n',
      common.facts,
    );
    expect(second.told).toEqual([]);
    expect(second.facts.readings.map(({ id }) => id)).toEqual(['v5', 'lamp', 'v5_bare']);
    expect(second.facts.faults[1]).toMatchObject({ weight: 3, weights: { 386: 2, 486: 4 } });
  });
});

describe('readProcedureFacts()', () => {
  const head = 'ends: { found: known, not-found: }\n';

  test('has nothing to say about the example of the reference', () => {
    const page = readFileSync('schema/procedures.md', 'utf8');
    const [, yaml = ''] = /kind: procedure\ntitle: [^\n]*\n([\s\S]*?)^---$/m.exec(page) ?? [];
    const { facts, codes } = procedureOf(yaml);
    expect(codes).toEqual([]);
    expect(facts.takes).toEqual([
      {
        kind: 'reading',
        id: 'rail',
        is: 'the rail that is down',
        bands: ['none', 'low', 'good'],
        unit: null,
      },
      {
        kind: 'quantity',
        id: 'limit',
        is: 'the least resistance of a sound rail',
        unit: 'Ω',
        usual: { value: '20', unit: 'Ω' },
      },
    ]);
    expect(facts.ends.map(({ id }) => id)).toEqual(['found', 'not-found']);
    expect(facts.readings.map(({ id, like }) => [id, like])).toEqual([
      ['r_gnd', null],
      ['r_gnd_bare', 'r_gnd'],
    ]);
    const [shared] = /---\nformat: 1\nkind: shared\n[\s\S]*?\n---/.exec(page) ?? [''];
    expect(sharedOf(shared.split('\n').slice(4, -1).join('\n')).codes).toEqual([]);
  });

  test('lets its readings name parameters: bands in needs and formulas, quantities in limits', () => {
    const { facts, told } = procedureOf(`${head}takes:
  rail: { is: r, bands: [none, low, good], unit: V }
  least: { is: l, unit: V }
readings:
  ripple: { is: x, unit: V, expect: at most least, needs: { rail: [low, good] }, source: s }
  share: { is: y, from: ripple / rail, scale: a < 1 % < b, normal: a, source: s }
  other: { is: z, options: [none, b], normal: b, only if: { rail: good }, source: s }
`);
    expect(told).toEqual([]);
    expect(facts.readings.map(({ id }) => id)).toEqual(['ripple', 'share', 'other']);
    expect(facts.settings).toEqual([]);
    expect(facts.readings[0]?.needs).toEqual([{ reading: 'rail', bands: ['low', 'good'] }]);
  });

  test('takes bands and unit from a shared reading that a parameter is like', () => {
    const { facts, told } = procedureOf(`${head}takes: { rail: { is: r, like: v5 } }\n`, common.facts);
    expect(told).toEqual([]);
    expect(facts.takes).toEqual([
      { kind: 'reading', id: 'rail', is: 'r', bands: ['none', 'low', 'good'], unit: 'V' },
    ]);
    expect(facts.readings.map(({ id }) => id)).toEqual(['v5', 'lamp']);
    expect([...facts.foreign.readings]).toEqual(['v5', 'lamp']);
  });

  test('takes ends as a list', () => {
    expect(procedureOf('ends: [done]\n').facts.ends).toEqual([{ id: 'done', means: null }]);
  });

  test.each([
    ['takes: { rail: { is: r } }', ['one-measure: rail']],
    ['takes: { rail: { is: r, bands: [a], like: v5 } }', ['one-measure: rail']],
    ['takes: { rail: { is: r, like: v6 } }', ['no-reading-named: v6']],
    ['takes: { rail: { bands: [a] } }', ['missing-key: rail']],
    ['takes: { rail: { is: r, bands: [a, a] } }', ['listed-twice: a']],
    ['takes: { least: { is: r, unit: V, usual: 5 Hz } }', ['wrong-unit: Hz']],
    ['takes: { v5: { is: r, unit: V } }', ['name-clash: v5']],
    ['takes: { bus: { is: r, unit: V } }', ['name-clash: bus']],
    ['takes: { 5v: { is: r, unit: V } }', ['name-form: 5v']],
    ['takes: { twin: { is: r, unit: V } }', ['reserved-word: twin']],
    [
      'takes: { a: { is: r, unit: V } }\nreadings:\n  a: { is: b, options: [x], normal: x, source: s }',
      ['name-clash: a'],
    ],
    [
      'takes: { a: { is: r, bands: [low, good] } }\nreadings:\n  b: { is: b, options: [none, x], normal: x, needs: [a], source: s }',
      ['parameter-bands: a'],
    ],
    [
      'takes: { a: { is: r, bands: [low, good] } }\nreadings:\n  b: { is: b, options: [none, x], normal: x, needs: { a: fine }, source: s }',
      ['no-band-named: fine'],
    ],
    [
      'takes: { a: { is: r, bands: [low, good] } }\nreadings:\n  b: { is: b, from: a > 1, normal: no, source: s }',
      ['input-not-number: a'],
    ],
    ['faults:\n  f: { is: f }', ['unknown-key: faults']],
    ['symptom: dead', ['unknown-key: symptom']],
  ])('is told what is wrong: %j', (yaml, told) => {
    expect(procedureOf(`${head}${yaml}\n`, common.facts).told).toEqual(told);
  });

  test.each([
    ['', ['missing-key: format: 1']],
    ['ends: [a, a]', ['listed-twice: a']],
    ['ends: { all: x }', ['reserved-word: all']],
    ['ends: found', ['wrong-shape: found']],
  ])('is told what is wrong with its ends: %j', (yaml, told) => {
    expect(procedureOf(`${yaml}\n`).told).toEqual(told);
  });
});
