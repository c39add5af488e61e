import { describe, expect, test } from 'vitest';
import { BestOrder } from '../../engine/figures/order/best-order.ts';
import { huffman } from '../../engine/figures/order/huffman.ts';
import type { Matrix } from '../../engine/figures/order/matrix.ts';
import { faultMatrix } from '../helpers/fault-matrix.ts';

// K. R. Pattipati, M. G. Alexandridis, IEEE Trans. SMC 20(4), 872–887, 1990: a fault-free state and five faults, five tests (matrix and 2.18 from
// memory; 109/50 computed by dynamic programming over all subsets with exact fractions, apart from this code).
const six = faultMatrix([
  { weight: 0.7, bands: [0, 0, 0, 0, 0] },
  { weight: 0.01, bands: [0, 1, 0, 0, 1] },
  { weight: 0.02, bands: [0, 0, 1, 1, 0] },
  { weight: 0.1, bands: [1, 0, 0, 1, 1] },
  { weight: 0.05, bands: [1, 1, 0, 0, 0] },
  { weight: 0.12, bands: [1, 1, 1, 1, 0] },
]);

// K. R. Balakrishnan, J. Semmelbauer, Decision Support Systems, 1999, doi 10.1016/s0167-9236(99)00015-9, table 1 (found); all defects alike.
const five = faultMatrix(
  [
    [0, 0, 0, 0],
    [0, 0, 0, 1],
    [0, 0, 1, 1],
    [0, 1, 1, 1],
    [1, 1, 1, 1],
  ].map((bands) => ({ weight: 1, bands })),
);

const optimum = (matrix: Matrix): number => {
  const { exact, high } = new BestOrder(matrix).advance(100_000);
  expect(exact).toBe(true);
  return high;
};

/** The rows that are left where a column came out in a band. */
const left = (matrix: Matrix, column: number, band: number): Matrix => ({
  ...matrix,
  rows: matrix.rows.filter(({ cells }) => cells[column] === band),
});

const weightOf = ({ rows }: Matrix): number => rows.reduce((sum, { weight }) => sum + weight, 0);

/** Expected minutes where one column comes first and the best follows. */
function beginningWith(matrix: Matrix, column: number): number {
  const parts = [0, 1].map((band) => left(matrix, column, band)).filter(({ rows }) => rows.length > 0);
  const later = parts.reduce((sum, part) => sum + weightOf(part) * optimum(part), 0);
  return (matrix.columns[column]?.minutes ?? 0) + later / weightOf(matrix);
}

describe('the matrix of six states and five tests', () => {
  test('takes 109/50 tests in the best order', () => {
    expect(optimum(six)).toBeCloseTo(109 / 50, 12);
  });

  test.each([
    ['t1', 0, 2.86],
    ['t2', 1, 2.18],
    ['t3', 2, 2.82],
    ['t4', 3, 2.18],
    ['t5', 4, 2.89],
  ])('takes that many where %s comes first', (_, column, tests) => {
    expect(beginningWith(six, column)).toBeCloseTo(tests, 12);
  });

  test('begins with one of the two tests that lead to the least', () => {
    const search = new BestOrder(six);
    search.advance(1000);
    const first = search.start.actions?.flatMap(({ columns }) => columns);
    expect([[1], [3], [1, 3]]).toContainEqual(first);
  });

  test('tells most at first by t1, which ends 31 % above the best: one step of information is not enough', () => {
    const bits = (share: number): number => -share * Math.log2(share) - (1 - share) * Math.log2(1 - share);
    const told = [0, 1, 2, 3, 4].map((column) => bits(weightOf(left(six, column, 1))));
    expect(told.indexOf(Math.max(...told))).toBe(0);
    expect(told[0]).toBeCloseTo(0.8415, 4);
    expect(beginningWith(six, 0) / optimum(six)).toBeCloseTo(1.312, 3);
  });

  test('cannot take less than its Huffman code, 1.59, which is not less than its entropy, 1.4549', () => {
    const weights = six.rows.map(({ weight }) => weight);
    expect(huffman(weights)).toBeCloseTo(1.59, 12);
    expect(weights.reduce((sum, weight) => sum - weight * Math.log2(weight), 0)).toBeCloseTo(1.4549, 4);
    expect(new BestOrder(six).found.low).toBeCloseTo(1.59, 12);
  });
});

describe('the matrix of five defects and four tests', () => {
  test('takes 2.4 tests in the best order, which is its Huffman code', () => {
    expect(optimum(five)).toBeCloseTo(2.4, 12);
    expect(huffman([1, 1, 1, 1, 1]) / 5).toBeCloseTo(2.4, 12);
  });

  test('takes 2.8 where the tests come in the order of the table', () => {
    const inOrder: Matrix = {
      ...five,
      columns: five.columns.map((column, at) => (at === 0 ? column : { ...column, after: [at - 1] })),
    };
    expect(optimum(inOrder)).toBeCloseTo(2.8, 12);
  });

  test('narrows down as printed for the third defect: five, four, three, one', () => {
    const defects = (matrix: Matrix): readonly number[] => matrix.rows.map(({ fault }) => fault + 1);
    const first = left(five, 0, 0);
    const second = left(first, 1, 0);
    const third = left(second, 2, 1);
    expect([five, first, second, third].map(defects)).toEqual([
      [1, 2, 3, 4, 5],
      [1, 2, 3, 4],
      [1, 2, 3],
      [3],
    ]);
  });

  test('has no use for the first test once the second was passed', () => {
    const search = new BestOrder(left(five, 1, 0));
    expect(search.start.open).toEqual([2, 3]);
  });
});

// Common practice of half-splitting a chain of stages of which one is bad; the numbers are those of balanced halves (computed).
// "worst case for 16 components is just 4 tests" (found).
describe('a chain of equal stages is halved', () => {
  test.each([
    [4, 2],
    [5, 2.4],
    [8, 3],
    [10, 3.4],
    [16, 4],
  ])('of %d stages in %d tests', (stages, tests) => {
    const rows = Array.from({ length: stages }, (_, bad) => ({
      weight: 1,
      bands: Array.from({ length: stages - 1 }, (_, point) => Number(point >= bad)),
    }));
    expect(optimum(faultMatrix(rows))).toBeCloseTo(tests, 12);
  });
});

// "sorting the defects in decreasing probability order": Balakrishnan and Semmelbauer, 1999, 4.1.1 (found).
test('where each test finds one fault the likeliest is tested first', () => {
  const weights = [0.1, 0.4, 0.2, 0.3];
  const matrix = faultMatrix(
    weights.map((weight, fault) => ({ weight, bands: weights.map((_, column) => Number(column === fault)) })),
  );
  // 0.4 · 1 + 0.3 · 2 + 0.2 · 3 + 0.1 · 3: what is left over needs no test of its own.
  expect(optimum(matrix)).toBeCloseTo(1.9, 12);
});
