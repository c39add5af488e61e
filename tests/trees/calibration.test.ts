import { describe, expect, test } from 'vitest';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import { errorsOff, reliability, reliabilityTable } from '../helpers/reliability.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';

/** Fewer suspects in a bin than this say nothing. */
const least = 30;

describe.each(shippedTrees)('$id', ({ id, tree }) => {
  test('suspects are right as often as their shares say, on 1,000 boards with a few readings each (npm run soak draws 20,000)', () => {
    const bins = reliability(tree as CompiledTree, { boards: 1000, seed: 1, proposedEvery: 250 });
    const table = reliabilityTable(`${id}, 1,000 boards`, bins);
    console.log(table);
    for (const bin of bins.filter(({ count }) => count >= least)) {
      expect(Math.abs(errorsOff(bin)), table).toBeLessThan(4);
    }
    expect(bins.filter(({ count }) => count >= least).length, table).toBeGreaterThanOrEqual(8);
  });
});

test('the same table shows it where somebody is too sure', () => {
  const tree = shippedTrees.find(({ id }) => id === 'memory')?.tree as CompiledTree;
  const bins = reliability(tree, { boards: 500, seed: 1, proposedEvery: 500, overSure: 1.6 });
  expect(Math.max(...bins.map((bin) => Math.abs(errorsOff(bin))))).toBeGreaterThan(4);
});
