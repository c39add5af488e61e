import { describe, expect, test } from 'vitest';
import type { Belief } from '../../../engine/suspects/belief.ts';
import { type BeliefTree, believe } from '../../../engine/suspects/believe.ts';
import { fitsOf } from '../../../engine/suspects/fits-of.ts';
import { factorWords, moveWords } from '../../../engine/suspects/move-words.ts';
import { movesOf } from '../../../engine/suspects/moves-of.ts';
import { treeOf } from '../../helpers/bench.ts';
import { faultOf, readingOf, sightingOf } from '../../helpers/suspect-models.ts';

const odds = { slip: 0.02, unlisted: 0.05, unlistedNormal: 0.8 };

/** Shares by the names of the faults; none of these is ''. */
const sharesOf = ({ hypotheses, shares }: Belief): Readonly<Record<string, number>> =>
  Object.fromEntries(
    hypotheses.map(({ faults }, at) => [faults.map(({ id }) => id).join('+'), shares[at] ?? 0]),
  );

describe('the priors of believe()', () => {
  const readings = [readingOf('v5', 'low *good')];
  const faults = [
    faultOf('fuse', { v5: 'low' }, { weight: 3, weights: { 486: 6, 586: 1 } }),
    faultOf('short', { v5: 'low' }, { weight: 1, brings: { regulator: 0.5 } }),
    faultOf('regulator', { v5: 'low' }, { weight: 4 }),
  ];
  const tree: BeliefTree = { readings, faults, odds: { ...odds, unlisted: 0.2 } };

  test('go by weight and leave the share of none of these', () => {
    const { fuse, short, regulator, '': none } = sharesOf(believe(tree, []));
    expect([fuse, short, regulator, none]).toEqual(
      [0.3, 0.1, 0.4, 0.2].map((one) => expect.closeTo(one, 12)),
    );
  });

  test('go by the class of the board where the author tells classes apart', () => {
    const { fuse, short } = sharesOf(believe(tree, [], { boardClass: '586' }));
    expect(fuse).toBeCloseTo(0.8 / 6, 12);
    expect(short).toBeCloseTo(0.8 / 6, 12);
  });

  test('leave out what is aside', () => {
    const shares = sharesOf(believe(tree, [], { aside: new Set(['fuse']) }));
    expect(shares).toEqual({
      short: expect.closeTo(0.16, 12),
      regulator: expect.closeTo(0.64, 12),
      '': expect.closeTo(0.2, 12),
    });
  });

  test('leave none of these alone when everything is aside', () => {
    const all = new Set(['fuse', 'short', 'regulator']);
    expect(sharesOf(believe(tree, [], { aside: all, pairs: true }))).toEqual({ '': 1 });
  });

  test('of two at once are the product of both, or what the one brings along', () => {
    const shares = sharesOf(believe(tree, [], { pairs: true }));
    // 3/8, 1/8 of which half comes alone, 4/8; 3/64, 12/64, 1/8 · 1/2.
    const parts = {
      fuse: 24,
      short: 4,
      regulator: 32,
      'fuse+short': 3,
      'fuse+regulator': 12,
      'short+regulator': 4,
    };
    for (const [name, part] of Object.entries(parts)) expect(shares[name]).toBeCloseTo((0.8 * part) / 79, 12);
    expect(Object.keys(shares)).toEqual([...Object.keys(parts), '']);
  });

  test('raise what a fault that was mended here brings along', () => {
    const aside = new Set(['short']);
    const before = sharesOf(believe(tree, [], { aside }));
    const after = sharesOf(believe(tree, [], { aside, mended: aside }));
    expect(after.regulator).toBeGreaterThan(before.regulator ?? 1);
  });
});

describe('readings that are computed', () => {
  const text = `---
format: 1
kind: tree
title: Clocks
symptom: slow
boards: [586]
readings:
  a: { is: a, unit: MHz, scale: slow < 9 MHz < good < 11 MHz < fast, normal: good, source: common practice }
  b: { is: b, unit: MHz, scale: slow < 9 MHz < good < 11 MHz < fast, normal: good, source: common practice }
  sum: { is: sum, from: a + b, unit: MHz, scale: low < 18.5 MHz < good < 21.5 MHz < high, normal: good, source: common practice }
faults:
  dull: { is: dull, shows: { sum: { low: 70 %, good: 30 % } }, source: common practice }
  other: { is: other, source: common practice }
---

## A

Read \`a\`, \`b\`, \`sum\`.

- all good → [Dull](#dull)
- otherwise → [Other](#other)

## Dull

Fault \`dull\`.

Mend it.

Prove \`a\`.

## Other

Fault \`other\`.

Mend it.

Prove \`a\`.
`;
  const tree = { ...treeOf(text), odds };
  const good = ['a', 'b'].map((reading) => sightingOf(reading, 'good'));

  test('are judged among the bands that their inputs allow, and are not counted twice', () => {
    // a, b good: 9..11 each, the sum 18..22: any of low, good, high.
    const before = sharesOf(believe(tree, good));
    const after = sharesOf(believe(tree, [...good, sightingOf('sum', 'low')]));
    const third = 0.02 / 3;
    const factor = (0.98 * 0.7 + third) / (0.98 / 3 + third);
    expect((after.dull ?? 0) / (after.other ?? 1)).toBeCloseTo(
      (factor * (before.dull ?? 0)) / (before.other ?? 1),
      12,
    );
    // None of these says nothing of it, like the fault that does not mention it.
    expect((after[''] ?? 0) / (after.other ?? 1)).toBeCloseTo((before[''] ?? 0) / (before.other ?? 1), 12);
  });

  test('say nothing where their inputs leave one band', () => {
    const slow = ['a', 'b'].map((reading) => sightingOf(reading, 'slow'));
    const before = sharesOf(believe(tree, slow));
    expect(sharesOf(believe(tree, [...slow, sightingOf('sum', 'low')]))).toEqual(before);
  });

  test('say nothing where they should not have come out so', () => {
    const slow = ['a', 'b'].map((reading) => sightingOf(reading, 'slow'));
    const before = sharesOf(believe(tree, slow));
    expect(sharesOf(believe(tree, [...slow, sightingOf('sum', 'high')]))).toEqual(before);
  });

  test('are predicted among what their inputs allow', () => {
    const slow = [sightingOf('a', 'slow'), sightingOf('b', 'good')];
    const belief = believe(tree, slow);
    // a below 9, b 9..11: the sum is below 20, so that it cannot be high.
    expect(belief.predict(0, 'sum')).toEqual(
      [0.98 * 0.7 + 0.01, 0.98 * 0.3 + 0.01, 0].map((one) => expect.closeTo(one, 12)),
    );
    expect(belief.predict(1, 'sum')).toEqual([0.5, 0.5, 0].map((one) => expect.closeTo(one, 12)));
  });
});

describe('fitsOf()', () => {
  const tree: BeliefTree = {
    readings: [
      readingOf('v5', 'low *good high'),
      readingOf('clk', 'none *good'),
      readingOf('reset', 'held *free'),
    ],
    faults: [
      faultOf('fuse', { v5: 'low' }),
      faultOf('crystal', { clk: 'none' }),
      faultOf('supply', { reset: 'held' }),
    ],
    odds,
  };
  const two = [sightingOf('v5', 'low'), sightingOf('clk', 'none')];

  test('is true while a fault explains what was read', () => {
    expect(fitsOf(believe(tree, []))).toBe(true);
    expect(fitsOf(believe(tree, [sightingOf('v5', 'low'), sightingOf('clk', 'good')]))).toBe(true);
  });

  test('is true while one slip is as good an explanation as a fault that is not listed', () => {
    expect(fitsOf(believe(tree, two))).toBe(true);
  });

  test('is false once no fault shows what was read', () => {
    expect(fitsOf(believe(tree, [sightingOf('v5', 'high')]))).toBe(false);
    expect(fitsOf(believe(tree, [...two, sightingOf('reset', 'held')]))).toBe(false);
  });

  test('is true again where two faults at once explain it', () => {
    expect(fitsOf(believe(tree, [...two, sightingOf('reset', 'held')], { pairs: true }))).toBe(true);
  });
});

describe('movesOf() and its words', () => {
  test('tell the factor of the odds with two significant digits', () => {
    const tree: BeliefTree = {
      readings: [readingOf('swing', 'weak *good'), readingOf('v5', 'low *good')],
      faults: [faultOf('crystal', { swing: 'weak' }), faultOf('driver', {})],
      odds: { ...odds, unlisted: 0 },
    };
    const seen = [sightingOf('swing', 'weak', { entry: 3 }), sightingOf('v5', 'good', { entry: 4 })];
    const [first, second] = movesOf(believe(tree, seen), 0);
    expect(first).toEqual({
      reading: 'swing',
      bands: ['weak'],
      logOdds: expect.closeTo(Math.log(99), 9),
      entry: 3,
    });
    expect(first && moveWords(first, 'reference swing')).toBe('reference swing weak ×99');
    expect(second && moveWords(second, '5 V')).toBe('5 V good ×1');
  });

  test('do not pretend to more than anybody can use', () => {
    expect([9.04, 0.977, 1234, 1e6, 1e-9].map((factor) => factorWords(Math.log(factor)))).toEqual([
      '9',
      '0.98',
      '1200',
      'over 10000',
      'under 0.0001',
    ]);
  });

  test('count each sighting of a reading that is taken again', () => {
    const tree: BeliefTree = {
      readings: [readingOf('v5', 'low *good')],
      faults: [faultOf('fuse', { v5: 'low' }), faultOf('other', {})],
      odds: { ...odds, unlisted: 0 },
    };
    const twice = [sightingOf('v5', 'low'), sightingOf('v5', 'low')];
    const moves = movesOf(believe(tree, twice), 0).map(({ logOdds }) => logOdds);
    expect(moves).toEqual([expect.closeTo(Math.log(99), 9), expect.closeTo(Math.log(99), 9)]);
  });
});

describe('a board that has none of the faults', () => {
  test('shows the symptom that it was brought with, as does a fault whose author knows nothing else of it', () => {
    const tree: BeliefTree = {
      readings: [readingOf('post', 'none *boot hangs memory'), readingOf('cell', 'leaked *good')],
      faults: [faultOf('leak', { cell: 'leaked' }, { rest: 'unknown' }), faultOf('cpu', { post: 'none' })],
      odds,
      given: [{ reading: 'post', band: 'none' }],
    };
    const { shares } = believe(tree, [sightingOf('post', 'none')]);
    expect(shares).toEqual(believe(tree, []).shares.map((one) => expect.closeTo(one, 12)));
  });
});

describe('a fault that comes and goes', () => {
  test('says nothing while the board runs, when readings come as on a healthy board', () => {
    const tree: BeliefTree = {
      readings: [readingOf('post', 'none *runs')],
      faults: [
        faultOf('socket', { post: 'none' }, { comes: 'sometimes' }),
        faultOf('crystal', { post: 'none' }),
      ],
      odds: { ...odds, unlisted: 0 },
    };
    const failing = sightingOf('post', 'none');
    const [socket, crystal] = believe(tree, [
      failing,
      sightingOf('post', 'runs', { board: 'running' }),
    ]).shares;
    // 0.99 · 0.99 against 0.99 · 0.01.
    expect((socket ?? 0) / (crystal ?? 1)).toBeCloseTo(99, 9);
    expect(believe(tree, [failing]).shares).toEqual([0.5, 0.5, 0]);
  });
});
