import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import { randomSections, treeOf } from '../helpers/random-sections.ts';
import { compareRuns } from '../helpers/scxml-runs.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';

const seed = Date.now() % 1_000_000;

describe('SCXML in an independent interpreter (@scion-scxml/scxml) visits the states of our machine', () => {
  test.each(shippedTrees)('on 1,000 random runs of $id', async ({ tree }) => {
    expect((await compareRuns(tree as CompiledTree, 1000, seed)).parted).toBeNull();
  });

  test('on 1,000 random runs of each of 200 random trees', async () => {
    await fc.assert(
      fc.asyncProperty(randomSections, async (sections) => {
        expect((await compareRuns(treeOf(sections), 1000, seed)).parted).toBeNull();
      }),
      { numRuns: 200, seed, endOnFailure: true },
    );
  });
});
