import { describe, expect, test } from 'vitest';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import { errorsOff, reliability, reliabilityTable } from '../helpers/reliability.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';

/** Fewer suspects in a bin than this say nothing. */
const least = 30;

describe.each(shippedTrees)('$id', ({ id, tree }) => {
  test('suspects are right as often as their shares say, on 1,000 boards with a few readings each (npm run soak draws 20,000)', () => {
    const bins = reliability(tree as CompiledTree, { boards: 1000, seed: 1, proposedEvery: 100 });
    const table = reliabilityTable(`${id}, 1,000 boards`, bins);
    console.log(table);
    for (const bin of bins.filter(({ count }) => count >= least)) {
      expect(Math.abs(errorsOff(bin)), table).toBeLessThan(4);
    }
    expect(bins.filter(({ count }) => count >= least).length, table).toBeGreaterThanOrEqual(8);
  });
});
