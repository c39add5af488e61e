import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import { randomSections, treeOf } from '../helpers/random-sections.ts';
import { compareRuns } from '../helpers/scxml-runs.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';

const seed = Date.now() % 1_000_000;

describe('SCXML in an independent interpreter (@scion-scxml/scxml) visits the states of our machine', () => {
  test.each(shippedTrees)('on 200 random runs of $id', async ({ tree }) => {
    const { parted, states } = await compareRuns(tree as CompiledTree, 200, seed);
    expect(parted).toBeNull();
    expect(states).toBeGreaterThan(1000);
  });

  test('on 50 random runs of each of 40 random trees', async () => {
    await fc.assert(
      fc.asyncProperty(randomSections, async (sections) => {
        expect((await compareRuns(treeOf(sections), 50, seed)).parted).toBeNull();
      }),
      { numRuns: 40, seed },
    );
  });
});
