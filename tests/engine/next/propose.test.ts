import { describe, expect, test } from 'vitest';
import type { Reading } from '../../../engine/model/reading.ts';
import { arrangingOf, type Check, type Later, propose } from '../../../engine/next/index.ts';
import { believe } from '../../../engine/suspects/believe.ts';
import { type Matrix, matrixBelief, matrixChecks } from '../../helpers/matrix-belief.ts';
import { faultOf, readingOf, sightingOf } from '../../helpers/suspect-models.ts';

/** Three faults, two of which only `fine` parts; `coarse` parts the third from both. */
const readings = [
  readingOf('coarse', 'low *good'),
  readingOf('fine', 'low *good high'),
  readingOf('idle', 'low *good'),
  readingOf('same', 'low *good', { like: 'coarse' }),
];
const faults = [
  faultOf('a', { coarse: 'low' }),
  faultOf('b', { fine: 'low' }),
  faultOf('c', { fine: 'high' }),
];
const tree = { readings, faults, odds: { slip: 0, unlisted: 0, unlistedNormal: 0.8 } };

const checkOf = (reading: Reading | undefined, more: Partial<Check> = {}): Check => {
  if (reading === undefined) throw new Error('expected a reading');
  return { reading, section: null, minutes: 1, wait: 0, changes: {}, ...more };
};
const [coarse, fine, idle, same] = readings;
const idsOf = ({ ranked }: ReturnType<typeof propose>) => ranked.map(({ check }) => check.reading.id);

describe('propose()', () => {
  test('ranks by bits for each minute, waiting counted like work', () => {
    const belief = believe(tree, []);
    expect(idsOf(propose(belief, tree, [checkOf(coarse), checkOf(fine)], { lookAhead: 0 }))).toEqual([
      'fine',
      'coarse',
    ]);
    expect(
      idsOf(propose(belief, tree, [checkOf(coarse), checkOf(fine, { wait: 1 })], { lookAhead: 0 })),
    ).toEqual(['coarse', 'fine']);
  });

  test('says what it is expected to tell, in bits, and how likely each band is', () => {
    const [proposal] = propose(believe(tree, []), tree, [checkOf(fine)]).ranked;
    expect(proposal?.bits).toBeCloseTo(Math.log2(3), 12);
    expect(proposal?.bands.map(({ share }) => share)).toEqual(
      [1 / 3, 1 / 3, 1 / 3].map((x) => expect.closeTo(x, 12)),
    );
    expect(proposal?.rate).toBeCloseTo(Math.log2(3), 12);
  });

  test('says which suspects a check parts, and what each makes it show', () => {
    const belief = believe(tree, []);
    const [proposal] = propose(belief, tree, [checkOf(fine)]).ranked;
    const parts = proposal?.parts.map(({ hypothesis, band }) => [
      belief.hypotheses[hypothesis]?.faults[0]?.id,
      band,
    ]);
    expect(parts?.toSorted()).toEqual([
      ['a', 'good'],
      ['b', 'low'],
      ['c', 'high'],
    ]);
  });

  test('leaves out what tells nothing: what no suspect shows, what was read, and what is like it', () => {
    const all = [coarse, fine, idle, same].map((reading) => checkOf(reading));
    expect(idsOf(propose(believe(tree, []), tree, all))).toEqual(['fine', 'coarse', 'same']);
    const seen = believe(tree, [sightingOf('coarse', 'good')]);
    expect(idsOf(propose(seen, tree, all))).toEqual(['fine']);
  });

  test('keeps equals in the order in which they come', () => {
    const matrix: Matrix = { priors: [0.5, 0.5], shows: ['000', '111'] };
    const checks = matrixChecks(matrix);
    expect(idsOf(propose(matrixBelief(matrix), { readings: [] }, checks))).toEqual(['t1', 't2', 't3']);
    expect(idsOf(propose(matrixBelief(matrix), { readings: [] }, checks.toReversed()))).toEqual([
      't3',
      't2',
      't1',
    ]);
  });

  test('says how long it takes until one suspect is left', () => {
    const whole = propose(believe(tree, []), tree, [checkOf(coarse), checkOf(fine, { minutes: 4 })]);
    // The cheap one first: it is enough in one case of three.
    expect(whole).toMatchObject({ minutesLeft: expect.closeTo(1 + (2 / 3) * 4, 9), exact: true });
  });

  test('counts suspects that no check tells apart as one', () => {
    expect(propose(believe(tree, []), tree, [checkOf(coarse)]).minutesLeft).toBeCloseTo(1, 9);
    const found = believe(tree, [sightingOf('coarse', 'low')]);
    expect(propose(found, tree, [checkOf(fine)]).minutesLeft).toBe(0);
  });

  test('is not exact where there is too much to look at', () => {
    const many: Matrix = {
      priors: Array.from({ length: 4096 }, () => 1 / 4096),
      shows: Array.from({ length: 4096 }, (_, at) => at.toString(2).padStart(12, '0').repeat(4)),
    };
    const { minutesLeft, exact } = propose(matrixBelief(many), { readings: [] }, matrixChecks(many));
    expect(exact).toBe(false);
    expect(minutesLeft).toBeGreaterThan(1);
    expect(minutesLeft).toBeLessThan(12);
  });
});

describe('propose() on a board whose condition has to be changed', () => {
  const bare = { when: { cards: 'out' } };
  const stripped = [
    readingOf('near', 'low *good', bare),
    readingOf('far', 'low *good', bare),
    readingOf('apart', 'low *good'),
  ];
  const board = {
    readings: stripped,
    faults: ['near', 'far', 'apart'].map((id) => faultOf(`no_${id}`, { [id]: 'low' })),
    odds: tree.odds,
  };
  const arranging = arrangingOf(
    {
      conditions: [{ id: 'cards', values: ['in', 'out'] }],
      sections: [{ kind: 'task', sets: { cards: 'out' }, minutes: 8, wait: 0 } as never],
    },
    { cards: 'in' },
  );

  test('pays for the change once', () => {
    const checks = stripped.map((reading) =>
      checkOf(reading, { minutes: 1 + (arranging.minutesTo(reading.when, arranging.now) ?? 0) }),
    );
    const { minutesLeft, ranked } = propose(believe(board, []), board, checks, { arranging });
    expect(ranked[0]?.check.reading.id).toBe('apart');
    expect(minutesLeft).toBeCloseTo(1 + (2 / 3) * 9, 9);
    const near = propose(believe(board, []), board, checks.slice(0, 2), { arranging, settled: 1 });
    expect(near.minutesLeft).toBeCloseTo(9 + (2 / 3) * 1, 9);
  });

  test('takes as long as the task that sets it, the cheapest of several, or the one that undoes it', () => {
    const { minutesTo } = arrangingOf(
      {
        conditions: [
          { id: 'cards', values: ['in', 'out'] },
          { id: 'cpu', values: ['in', 'out'] },
          { id: 'lid', values: ['on', 'off'] },
        ],
        sections: [
          { kind: 'task', sets: { cards: 'out', cpu: 'out' }, minutes: 8, wait: 1 },
          { kind: 'task', sets: { cards: 'out' }, minutes: 3, wait: 0 },
        ] as never,
      },
      {},
    );
    const now = { cards: 'in', cpu: 'in', lid: 'on' };
    expect(minutesTo({ cards: 'out' }, now)).toBe(3);
    expect(minutesTo({ cards: 'out', cpu: 'out' }, now)).toBe(9);
    expect(minutesTo({ cards: 'in', cpu: 'out' }, now)).toBe(9);
    expect(minutesTo({ cards: 'in' }, { ...now, cards: 'out' })).toBe(3);
    expect(minutesTo({ lid: 'off' }, now)).toBe(2);
    expect(minutesTo({ cards: 'in' }, now)).toBe(0);
    expect(minutesTo({ cover: 'off' }, now)).toBeNull();
    expect(minutesTo({ cards: 'half' }, now)).toBeNull();
  });
});

describe('propose() where checks wait for others', () => {
  const gate = readingOf('gate', 'low *good');
  const behind = readingOf('behind', 'low *good high');
  const side = readingOf('side', 'low *good');
  const gated = {
    readings: [gate, behind, side],
    faults: [
      faultOf('g', { gate: 'low' }, { weight: 0.2 }),
      faultOf('x', { behind: 'low' }, { weight: 4 }),
      faultOf('y', { behind: 'high' }, { weight: 4 }),
      faultOf('z', { side: 'low' }, { weight: 2 }),
    ],
    odds: tree.odds,
  };
  const later: readonly Later[] = [
    { check: checkOf(behind), before: [{ reading: 'gate', bands: ['good'] }] },
  ];

  test('takes first what opens up the most, and says what for', () => {
    const checks = [checkOf(gate), checkOf(side)];
    const belief = believe(gated, []);
    expect(idsOf(propose(belief, gated, checks))[0]).toBe('side');
    const [first] = propose(belief, gated, checks, { later }).ranked;
    expect(first).toMatchObject({ check: { reading: { id: 'gate' } }, opens: { id: 'behind' } });
  });

  test('proposes none of those that wait, and nothing for one that can never be reached', () => {
    const checks = [checkOf(gate), checkOf(side)];
    const belief = believe(gated, []);
    expect(idsOf(propose(belief, gated, checks, { later })).toSorted()).toEqual(['gate', 'side']);
    expect(propose(belief, gated, [checkOf(side)], { later }).ranked[0]).not.toHaveProperty('opens');
  });
});
