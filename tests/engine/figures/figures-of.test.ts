import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { adviceWords } from '../../../engine/figures/advice/advice-words.ts';
import { figuresOf } from '../../../engine/figures/figures-of.ts';
import { splittingWords } from '../../../engine/figures/testability/splitting-words.ts';
import { TreeOrder } from '../../../engine/figures/tree-order.ts';
import { benchTree, treeOf, wholeTree } from '../../helpers/bench.ts';
import { shippedTrees } from '../../helpers/shipped-trees.ts';

const text = readFileSync('tests/helpers/figures-tree.md', 'utf8');
const tree = treeOf(text);
const figures = figuresOf(tree);

/** The tree with its two joined faults in sections of their own. */
const parted = treeOf(
  text
    .replace('→ [Supply or switch](#supply-or-switch)', '→ [The supply](#the-supply)')
    .replace(
      '## Supply or switch\n\nFault `dead_supply`, `broken_switch`.\n\n### `dead_supply`',
      '## The supply\n\nFault `dead_supply`.',
    )
    .replace('### `broken_switch`', 'Prove `v5`.\n\n## The switch\n\nFault `broken_switch`.'),
);

// By hand: the shares are 1, 2, 4 and 1 of 8. Sound 3, five volts 2, fuse 4 and 10 of waiting, cards out 6, five volts again 2.
describe('figures of a tree that can be reckoned by hand', () => {
  test('give the minutes along the tree for each fault, waiting apart', () => {
    const each = figures.along.faults.map(({ fault, share, expected }) => [
      fault,
      share,
      expected.handsOn,
      expected.waiting,
    ]);
    expect(each).toEqual([
      ['blown_fuse', 0.125, 9, 10],
      ['shorted_card', 0.25, 17, 10],
      ['dead_supply', 0.5, 17, 10],
      ['broken_switch', 0.125, 17, 10],
    ]);
    expect(figures.along.expected).toEqual({ handsOn: 16, waiting: 10 });
    expect(figures.along.worst).toEqual({ handsOn: 17, waiting: 10 });
    expect(figures.along.arrives).toBe(1);
  });

  test('find the best order: out with the cards, measure, and the fuse only where that says nothing', () => {
    const { exact, high, low, begins } = figures.best;
    // 6 + 2 for all, 14 for the six of eight that are left.
    expect({ exact, low, high }).toEqual({ exact: true, low: 18.5, high: 18.5 });
    expect(begins).toEqual([
      { take: ['v5_bare'], minutes: 8 },
      { take: ['fuse'], minutes: 14 },
    ]);
  });

  test('follow the best order on one board', () => {
    const order = new TreeOrder(tree);
    order.advance(100);
    expect(
      order.follow((reading) => (reading === 'v5_bare' ? 'good' : '')).map(({ minutes }) => minutes),
    ).toEqual([8]);
    expect(
      order.follow((reading) => (reading === 'v5_bare' ? 'none' : 'open')).map(({ minutes }) => minutes),
    ).toEqual([8, 14]);
  });

  test('say which faults no reading of the tree tells apart, and in which order to try them', () => {
    // 4 in 10 minutes against 1 in 2: the switch first. (5 · 2 + 4 · 10) / 5.
    expect(figures.groups).toEqual([
      {
        faults: ['broken_switch', 'dead_supply'],
        share: 0.625,
        minutes: 10,
        minutesKnown: true,
        splitting: [],
      },
    ]);
  });

  test('name the declared reading that would tell them apart, where they have sections of their own', () => {
    const [group] = figuresOf(parted).groups;
    expect(group?.splitting).toEqual([{ by: 'declared', reading: 'smell' }]);
  });

  test('say where to look first where nothing declared tells them apart', () => {
    const [group] = figuresOf({ ...parted, faults: parted.faults.map(withoutSmell) }).groups;
    expect(group?.splitting).toEqual([{ by: 'new' }]);
    const words = group?.splitting.map((one) => splittingWords(one, group.faults));
    expect(words).toEqual(['a reading that differs between broken_switch and dead_supply']);
  });

  test('weigh detected faults and groups by how often they are met', () => {
    const { taken, declared } = figures.testability;
    expect(taken).toMatchObject({ readings: 4, detected: 1, isolated: [0.375, 1, 1] });
    // 3 of 8 alone, 5 of 8 in two; two faults of four in two; three groups.
    expect(taken.meanGroup.rateWeighted).toBeCloseTo(1.625, 12);
    expect(taken.meanGroup.perFault).toBeCloseTo(1.5, 12);
    expect(taken.meanGroup.perGroup).toBeCloseTo(4 / 3, 12);
    expect(declared).toMatchObject({ readings: 5, isolated: [1, 1, 1] });
  });

  test('tell where the order loses its minutes', () => {
    expect(figures.advice.map((one) => adviceWords(tree, one))).toEqual([
      'After “Sound” only “A card” is left for 13 % of all boards; lead them there at once: −3.0 minutes expected',
      '“Five volts” tells nothing to those who come there, 100 % of all boards; leave it out or ask it elsewhere: −2.0 minutes expected',
      'Ask `fuse` before “Sound”: −0.6 minutes expected. It decides where 13 % of those who come there end',
    ]);
  });

  test('tell what each section costs and tells', () => {
    const fuse = figures.sections.find(({ section }) => section === 'the-fuse');
    // One of eight ends there: h(1/8) bits.
    expect(fuse).toMatchObject({ reach: 1, minutes: 14 });
    expect(fuse?.bits).toBeCloseTo(0.5436, 4);
  });
});

const withoutSmell = (fault: (typeof parted.faults)[number]) => ({
  ...fault,
  shows: fault.shows.filter(({ reading }) => reading !== 'smell'),
});

describe('figures of other trees', () => {
  const schema = JSON.parse(readFileSync('schema/figures.schema.json', 'utf8')) as object;
  const validate = new Ajv2020({
    allErrors: true,
    strict: true,
    strictRequired: false,
    strictTypes: false,
    discriminator: true,
  }).compile(schema);
  const named = [
    { id: 'the small tree', of: tree },
    { id: 'the bench tree', of: benchTree() },
    { id: 'the whole tree', of: wholeTree() },
    ...shippedTrees.flatMap(({ id, tree: of }) => (of === null ? [] : [{ id, of }])),
  ];

  test.each(named)('of $id fit their schema, and their bound does not cross the best found', ({ of }) => {
    const found = figuresOf(of, { budget: 40 });
    expect(validate(JSON.parse(JSON.stringify(found))), JSON.stringify(validate.errors)).toBe(true);
    expect(found.best.low).toBeLessThanOrEqual(found.best.high);
    expect(found.along.faults.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    const { taken } = found.testability;
    expect(taken.isolated).toEqual(taken.isolated.toSorted());
  });

  test('that are not figures do not fit the schema', () => {
    expect(validate({ ...figures, best: { ...figures.best, low: -1 } })).toBe(false);
    expect(validate({ ...figures, advice: [{ kind: 'sooner' }] })).toBe(false);
  });

  test('are at least as good in the best order as along a shipped tree', () => {
    for (const { tree: of } of shippedTrees) {
      if (of === null) continue;
      const { along, best } = figuresOf(of, { budget: 40 });
      expect(best.high, of.id).toBeLessThanOrEqual(along.expected.handsOn + along.expected.waiting);
    }
  });
});

describe('the search', () => {
  const [memory] = shippedTrees.flatMap(({ id, tree: of }) => (id === 'memory' && of !== null ? [of] : []));
  if (memory === undefined) throw new Error('expected the tree "memory"');

  test('tells how far it has come, and never loses ground', () => {
    const seen: number[][] = [];
    figuresOf(memory, {
      budget: 300,
      onProgress: ({ low, high, looked }) => void seen.push([low, high, looked]),
    });
    expect(seen.length).toBeGreaterThan(3);
    for (const [at, [low = 0, high = 0, looked = 0]] of seen.entries()) {
      const [before = 0, above = Number.POSITIVE_INFINITY, earlier = 0] = seen[at - 1] ?? [];
      expect(low).toBeGreaterThanOrEqual(before);
      expect(high).toBeLessThanOrEqual(above);
      expect(looked).toBeGreaterThan(earlier);
    }
  });

  test('ends when it is told to, with the best found and a bound', () => {
    let asked = 0;
    const { best } = figuresOf(memory, { budget: 100_000, stop: () => ++asked > 2 });
    expect(best.exact).toBe(false);
    expect(best.looked).toBeLessThan(400);
    expect(best.low).toBeGreaterThan(0);
    expect(best.high).toBeLessThan(60);
  });
});
