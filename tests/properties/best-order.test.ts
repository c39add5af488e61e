import { describe, expect, test } from 'vitest';
import { BestOrder } from '../../engine/figures/order/best-order.ts';
import { bruteOrder } from '../helpers/brute-order.ts';
import { randomMatrix } from '../helpers/random-matrix.ts';

const instances = 500;

/** Up to 7 faults and 6 checks, two to four bands, one to nine minutes; a third without shares, every other one with an order, every
 *  fifth with faults that say nothing of some checks. */
const shapeOf = (seed: number) => ({
  faults: 2 + (seed % 6),
  checks: 1 + (seed % 6),
  shared: [0, 0.2, 0.5][seed % 3] ?? 0,
  ordered: seed % 2 === 0 ? 0 : 0.4,
  silent: seed % 5 === 0 ? 0.2 : 0,
});

describe('the search for the best order', () => {
  test(`finds what trying every order finds, on ${instances} random matrices, and its bounds never cross it`, () => {
    for (let seed = 1; seed <= instances; seed += 1) {
      const matrix = randomMatrix(seed, shapeOf(seed));
      const best = bruteOrder(matrix);
      const search = new BestOrder(matrix);
      let { found } = search;
      for (let budget = 0; ; budget += 1) {
        expect(found.low, `seed ${seed}, bound after ${budget} states`).toBeLessThanOrEqual(best + 1e-9);
        expect(found.high, `seed ${seed}, best found after ${budget} states`).toBeGreaterThanOrEqual(
          best - 1e-9,
        );
        if (found.exact || budget > 20_000) break;
        found = search.advance(1);
      }
      expect(found.exact, `seed ${seed} comes to an end`).toBe(true);
      expect(found.high, `seed ${seed}`).toBeCloseTo(best, 9);
    }
  });

  test('does not depend on the order of faults and checks', () => {
    for (let seed = 1; seed <= 40; seed += 1) {
      const matrix = randomMatrix(seed, { faults: 8, checks: 7, shared: 0.2, ordered: 0 });
      const turned = {
        rows: matrix.rows.toReversed().map(({ cells, ...row }) => ({ ...row, cells: cells.toReversed() })),
        columns: matrix.columns.toReversed(),
      };
      const [one, other] = [matrix, turned].map((each) => new BestOrder(each).advance(50_000));
      expect(one?.high, `seed ${seed}`).toBeCloseTo(other?.high ?? 0, 9);
    }
  });
});
