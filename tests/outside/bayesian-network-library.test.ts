import bayesjs from 'bayesjs';
import { describe, expect, test } from 'vitest';
import { type BeliefTree, believe } from '../../engine/suspects/believe.ts';
import type { Sighting } from '../../engine/suspects/sighting.ts';
import { asNetwork, cause, noneOfThese } from '../helpers/as-network.ts';
import { dice } from '../helpers/dice.ts';
import { plainTraits, randomBeliefTree, randomSightings } from '../helpers/suspect-models.ts';

/** The library's answer by its junction tree; `bayesjs` 0.6.5, general-purpose, MIT. */
function libraryShares(tree: BeliefTree, sightings: readonly Sighting[]): readonly number[] {
  const { network, given } = asNetwork(tree, sightings);
  return [...tree.faults.map(({ id }) => id), noneOfThese].map((name) =>
    bayesjs.inferences.junctionTree.infer(network, { [cause]: name }, given),
  );
}

function expectSame(tree: BeliefTree, sightings: readonly Sighting[], seed: number): void {
  const ours = believe(tree, sightings).shares;
  const theirs = libraryShares(tree, sightings);
  const apart = Math.max(...ours.map((share, at) => Math.abs(share - (theirs[at] ?? Number.NaN))));
  expect(apart, `seed ${seed}`).toBeLessThan(1e-9);
}

describe('suspects beside a general-purpose Bayesian-network library', () => {
  // computed: the library works out the same network, written down from the language reference.
  test('are the same to 1e-9 on 1,000 random models with independent readings', () => {
    for (let seed = 0; seed < 1000; seed++) {
      const rolls = dice(seed);
      const sizes = { readings: 2 + rolls.upTo(4), faults: 2 + rolls.upTo(5) };
      const tree = randomBeliefTree(rolls, sizes, { ...plainTraits, restUnknown: true });
      expectSame(tree, randomSightings(rolls, tree, 1 + rolls.upTo(5)), seed);
    }
  });

  // computed: as above, with readings that are like others and readings that are hidden behind others.
  test('are the same to 1e-9 on 200 random models whose readings come out together', () => {
    for (let seed = 0; seed < 200; seed++) {
      const rolls = dice(seed);
      const sizes = { readings: 2 + rolls.upTo(3), faults: 2 + rolls.upTo(3) };
      const tree = randomBeliefTree(rolls, sizes, { linked: true, restUnknown: true, sometimes: false });
      expectSame(tree, randomSightings(rolls, tree, 1 + rolls.upTo(4)), seed);
    }
  });
});
