import { describe, expect, test } from 'vitest';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import { errorsOff, reliability, reliabilityTable } from '../helpers/reliability.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';

describe.each(shippedTrees)('$id', ({ id, tree }) => {
  test('suspects are right as often as their shares say, on 20,000 boards with a few readings each', () => {
    const bins = reliability(tree as CompiledTree, { boards: 20_000, seed: 1_000_000, proposedEvery: 50 });
    const table = reliabilityTable(`${id}, 20,000 boards`, bins);
    console.log(table);
    for (const bin of bins) {
      expect(bin.count, table).toBeGreaterThan(100);
      expect(Math.abs(errorsOff(bin)), table).toBeLessThan(4);
    }
  });
});
