import { describe, expect, test } from 'vitest';
import { propose } from '../../engine/next/index.ts';
import {
  equalStages,
  expectedMinutes,
  type Matrix,
  matrixBelief,
  matrixChecks,
} from '../helpers/matrix-belief.ts';

/** Pattipati and Alexandridis, IEEE Trans. SMC 20(4), 1990, doi 10.1109/21.105086: five faults and the sound state, five tests of
 *  equal cost. Matrix and optimum: from memory; the figures below: computed by exact search. */
const fiveFaults: Matrix = {
  priors: [0.7, 0.01, 0.02, 0.1, 0.05, 0.12],
  shows: ['00000', '01001', '00110', '10011', '11000', '11110'],
};

const policy =
  (lookAhead: number) =>
  (belief: ReturnType<typeof matrixBelief>, checks: ReturnType<typeof matrixChecks>) => {
    const [best] = propose(belief, { readings: [] }, checks, { lookAhead, settled: 1 }).ranked;
    if (best === undefined) throw new Error('expected a test that parts what is left');
    return best.check;
  };

describe('the next check on the matrix of five faults and five tests', () => {
  const ranked = propose(matrixBelief(fiveFaults), { readings: [] }, matrixChecks(fiveFaults), {
    lookAhead: 0,
  }).ranked;
  const bitsOf = (id: string) => ranked.find(({ check }) => check.reading.id === id)?.bits ?? 0;

  // computed
  test('is expected to tell 0.8415 bit by t1, 0.7950 by t4 and 0.6801 by t2', () => {
    expect(bitsOf('t1')).toBeCloseTo(0.8415, 4);
    expect(bitsOf('t4')).toBeCloseTo(0.795, 4);
    expect(bitsOf('t2')).toBeCloseTo(0.6801, 4);
    expect(ranked[0]?.check.reading.id).toBe('t1');
  });

  // computed
  test('ends at 2.86 tests by pure one-step information gain', () => {
    expect(expectedMinutes(fiveFaults, policy(0))).toBeCloseTo(2.86, 12);
  });

  // from memory, computed
  test('ends at the optimum of 2.18 tests when a second step is looked at', () => {
    expect(expectedMinutes(fiveFaults, policy(8))).toBeCloseTo(2.18, 12);
  });

  // computed
  test('says 2.86 tests ahead, for the order that takes the most bits each time', () => {
    const { minutesLeft, exact } = propose(
      matrixBelief(fiveFaults),
      { readings: [] },
      matrixChecks(fiveFaults),
      {
        settled: 1,
      },
    );
    expect(exact).toBe(true);
    expect(minutesLeft).toBeCloseTo(2.86, 12);
  });
});

describe('the next check among equal stages in a row', () => {
  // computed; 16 stages take 4 tests: found, https://biologyinsights.com/what-is-a-half-split-faster-than-sequential-testing/
  test.each([
    [4, 2],
    [5, 2.4],
    [8, 3],
    [10, 3.4],
    [16, 4],
  ])('halves %i of them in %f tests', (stages, tests) => {
    expect(expectedMinutes(equalStages(stages), policy(0))).toBeCloseTo(tests, 12);
    expect(expectedMinutes(equalStages(stages), policy(8))).toBeCloseTo(tests, 12);
  });
});
