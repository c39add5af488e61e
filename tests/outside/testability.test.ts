import { describe, expect, test } from 'vitest';
import { testabilityOf } from '../../engine/figures/testability/testability-of.ts';
import { faultMatrix } from '../helpers/fault-matrix.ts';

// The matrix: K. R. Pattipati, M. G. Alexandridis, IEEE Trans. SMC 20(4), 1990 (from memory). Definitions: IEEE 1522 and MIL-HDBK-2165, rate-weighted
// (from memory); Σ size² / faults (found). The figures were computed from them by hand, apart from this code (computed).
const rows = [
  { tests: '01001', rate: 0.01 },
  { tests: '00110', rate: 0.02 },
  { tests: '10011', rate: 0.1 },
  { tests: '11000', rate: 0.05 },
  { tests: '11110', rate: 0.12 },
];

const table = [
  { used: [0, 1, 2, 3, 4], detected: 1, isolated: [1, 1, 1], means: [1, 1, 1] },
  { used: [0, 1], detected: 0.9333, isolated: [0.3929, 1, 1], means: [1.6071, 1.5, 1.3333] },
  { used: [0, 3], detected: 0.9667, isolated: [0.2414, 1, 1], means: [1.7586, 1.5, 1.3333] },
  { used: [2, 4], detected: 0.8333, isolated: [0, 1, 1], means: [2, 2, 2] },
  { used: [0], detected: 0.9, isolated: [0, 0, 1], means: [3, 3, 3] },
];

describe('testability figures of a small matrix of five faults', () => {
  for (const { used, detected, isolated, means } of table) {
    test(`with ${used.map((column) => `t${column + 1}`).join(', ')} they are those of the table`, () => {
      const matrix = faultMatrix(
        rows.map(({ tests, rate }) => ({ weight: rate, bands: used.map((column) => Number(tests[column])) })),
      );
      const figures = testabilityOf({ matrix, normal: used.map(() => [0]) });
      expect(figures.detected).toBeCloseTo(detected, 4);
      figures.isolated.forEach((share, at) => void expect(share).toBeCloseTo(isolated[at] as number, 4));
      const { rateWeighted, perFault, perGroup } = figures.meanGroup;
      [rateWeighted, perFault, perGroup].forEach(
        (mean, at) => void expect(mean).toBeCloseTo(means[at] as number, 4),
      );
    });
  }

  test('faults that two tests leave together stand in one group', () => {
    const matrix = faultMatrix(
      rows.map(({ tests, rate }) => ({ weight: rate, bands: [0, 1].map((column) => Number(tests[column])) })),
    );
    expect(testabilityOf({ matrix, normal: [[0], [0]] }).groups).toEqual([[3, 4]]);
  });
});
