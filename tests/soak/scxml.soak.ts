import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import { randomSections, treeOf } from '../helpers/random-sections.ts';
import { compareRuns } from '../helpers/scxml-runs.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';

/** 200 random trees in all. */
const batches = Array.from({ length: 10 }, (_, index) => index + 1);
const seed = Date.now() % 1_000_000;

describe('SCXML in an independent interpreter (@scion-scxml/scxml) visits the states of our machine', () => {
  test.each(shippedTrees)('on 1,000 random runs of $id', async ({ tree }) => {
    expect((await compareRuns(tree as CompiledTree, 1000, seed)).parted).toBeNull();
  });

  test.each(batches)('on 1,000 random runs of each of 20 random trees, batch %i of 10', async (batch) => {
    await fc.assert(
      fc.asyncProperty(randomSections, async (sections) => {
        expect((await compareRuns(treeOf(sections), 1000, seed)).parted).toBeNull();
      }),
      { numRuns: 20, seed: seed + batch, endOnFailure: true },
    );
  });
});
