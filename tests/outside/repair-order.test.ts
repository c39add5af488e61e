import { describe, expect, test } from 'vitest';
import { minutesInOrder, repairOrder } from '../../engine/figures/repair-order.ts';

// Kadane and Simon's rule, "P over C" (found in arXiv 1203.3502). The numbers were brute-forced over all 24 orders (computed).
describe('four tries of which one mends', () => {
  const tries = [
    { weight: 0.4, minutes: 8 },
    { weight: 0.3, minutes: 3 },
    { weight: 0.2, minutes: 5 },
    { weight: 0.1, minutes: 1 },
  ];
  const by = (rank: (one: (typeof tries)[number]) => number): readonly number[] =>
    [...tries.entries()].toSorted(([, one], [, other]) => rank(other) - rank(one)).map(([at]) => at);

  test('take 9.50 minutes in the order of weight per minute, the best of all 24', () => {
    const orders = permutations([0, 1, 2, 3]);
    expect(orders).toHaveLength(24);
    const all = orders.map((order) => minutesInOrder(tries, order));
    expect(minutesInOrder(tries, repairOrder(tries))).toBeCloseTo(9.5, 12);
    expect(Math.min(...all)).toBeCloseTo(9.5, 12);
    expect(Math.max(...all)).toBeCloseTo(12.7, 12);
  });

  test('take 11.40 with the likeliest first and 9.90 with the shortest first', () => {
    expect(
      minutesInOrder(
        tries,
        by(({ weight }) => weight),
      ),
    ).toBeCloseTo(11.4, 12);
    expect(
      minutesInOrder(
        tries,
        by(({ minutes }) => -minutes),
      ),
    ).toBeCloseTo(9.9, 12);
  });

  test('that are as good as each other stay in their order', () => {
    expect(repairOrder([tries[1], tries[3]].flatMap((one) => one ?? []))).toEqual([0, 1]);
  });
});

// Tries that overlap, from the troubleshooting literature of Aalborg (from memory); both numbers brute-forced (computed). Four faults of .20 .25 .40 .15;
// the first try mends the first two, the second the middle two, the third the last two; each takes a minute.
test('where tries overlap the rule is no longer the best: 1.50 against 1.45', () => {
  const faults = [0.2, 0.25, 0.4, 0.15];
  const mends = [
    [0, 1],
    [1, 2],
    [2, 3],
  ];
  const expected = (order: readonly number[]): number => {
    let left = faults.map((weight) => weight);
    let minutes = 0;
    for (const at of order) {
      minutes += left.reduce((sum, weight) => sum + weight, 0);
      left = left.map((weight, fault) => (mends[at]?.includes(fault) ? 0 : weight));
    }
    return minutes;
  };
  const weights = mends.map((some) => some.reduce((sum, fault) => sum + (faults[fault] ?? 0), 0));
  const ruled = repairOrder(weights.map((weight) => ({ weight, minutes: 1 })));
  expect(ruled).toEqual([1, 2, 0]);
  // The rule as the literature applies it, from the highest of what each mends alone: .65, then of what is left, .20 before .15.
  expect(expected([1, 0, 2])).toBeCloseTo(1.5, 12);
  expect(Math.min(...permutations([0, 1, 2]).map(expected))).toBeCloseTo(1.45, 12);
});

function permutations(items: readonly number[]): readonly (readonly number[])[] {
  if (items.length === 0) return [[]];
  return items.flatMap((item) =>
    permutations(items.filter((other) => other !== item)).map((rest) => [item, ...rest]),
  );
}
