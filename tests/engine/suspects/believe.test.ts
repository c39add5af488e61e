import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bandsOf } from '../../../engine/scale/index.ts';
import { after } from '../../../engine/suspects/after.ts';
import type { Belief } from '../../../engine/suspects/belief.ts';
import { type BeliefTree, believe } from '../../../engine/suspects/believe.ts';
import { movesOf } from '../../../engine/suspects/moves-of.ts';
import type { Sighting } from '../../../engine/suspects/sighting.ts';
import { bruteLikelihood } from '../../helpers/brute-belief.ts';
import { dice } from '../../helpers/dice.ts';
import { randomBeliefTree, randomSightings } from '../../helpers/suspect-models.ts';

const everything = { linked: true, restUnknown: true, sometimes: true };
const seeds = fc.integer({ min: 0, max: 2 ** 31 });

/** Shares from the priors that a belief without sightings has, and likelihoods worked out by brute force. */
function bruteShares(
  tree: BeliefTree,
  sightings: readonly Sighting[],
  { hypotheses, shares }: Belief,
): readonly number[] {
  const weights = hypotheses.map(
    ({ faults }, at) => (shares[at] ?? 0) * bruteLikelihood(tree, faults, sightings),
  );
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => weight / sum);
}

function expectClose(found: readonly number[], wanted: readonly number[]): void {
  expect(found.length).toBe(wanted.length);
  found.forEach((value, at) => {
    expect(Math.abs(value - (wanted[at] ?? Number.NaN))).toBeLessThan(1e-9);
  });
}

describe('believe()', () => {
  test.each([
    ['single faults', { pairs: false, mended: false }],
    ['two faults at once', { pairs: true, mended: false }],
    ['faults mended meanwhile', { pairs: false, mended: true }],
    ['faults mended meanwhile, and two at once', { pairs: true, mended: true }],
  ])('equals going through every board: %s', (_, { pairs, mended }) => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const rolls = dice(seed);
        const tree = randomBeliefTree(rolls, { readings: pairs ? 3 : 4, faults: 3 }, everything);
        const sightings = randomSightings(rolls, tree, 1 + rolls.upTo(6), { running: true, mended });
        const options = { pairs, aside: new Set(mended ? ['f0'] : []) };
        const prior = believe(tree, [], options);
        const belief = believe(tree, sightings, options);
        expectClose(belief.shares, bruteShares(tree, sightings, prior));
      }),
      { numRuns: 60 },
    );
  });

  test('predicts what brute force says of one more sighting', () => {
    fc.assert(
      fc.property(seeds, fc.boolean(), (seed, pairs) => {
        const rolls = dice(seed);
        const tree = randomBeliefTree(rolls, { readings: 4, faults: 3 }, everything);
        const sightings = randomSightings(rolls, tree, rolls.upTo(5), { running: true, mended: true });
        const belief = believe(tree, sightings, { pairs, aside: new Set(['f0']) });
        const hypothesis = rolls.upTo(belief.hypotheses.length);
        const { faults } = belief.hypotheses[hypothesis] ?? { faults: [] };
        const before = bruteLikelihood(tree, faults, sightings);
        for (const reading of tree.readings) {
          const wanted = bandsOf(reading).map((band) => {
            const next = { reading: reading.id, bands: [{ band, share: 1 }], ...now };
            return bruteLikelihood(tree, faults, [...sightings, next]) / before;
          });
          expectClose(belief.predict(hypothesis, reading.id), wanted);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('gives shares that add up to 1 and do not depend on the order of the sightings', () => {
    fc.assert(
      fc.property(seeds, fc.boolean(), (seed, pairs) => {
        const rolls = dice(seed);
        const tree = randomBeliefTree(rolls, { readings: 8, faults: 6 }, everything);
        const sightings = randomSightings(rolls, tree, 10, { running: true, mended: true });
        const { shares } = believe(tree, sightings, { pairs });
        expect(Math.abs(shares.reduce((sum, share) => sum + share, 0) - 1)).toBeLessThan(1e-9);
        expectClose(believe(tree, sightings.toReversed(), { pairs }).shares, shares);
      }),
      { numRuns: 50 },
    );
  });

  test('takes one imagined reading more into account as if it had been read', () => {
    fc.assert(
      fc.property(seeds, fc.boolean(), (seed, pairs) => {
        const rolls = dice(seed);
        const tree = randomBeliefTree(rolls, { readings: 6, faults: 4 }, everything);
        const sightings = randomSightings(rolls, tree, 4, { running: true, mended: true });
        const imagined = randomSightings(rolls, tree, 3);
        const belief = imagined.reduce(
          (sofar, { reading, bands }) => {
            const all = tree.readings.find(({ id }) => id === reading);
            return after(sofar, reading, all === undefined ? 0 : bandsOf(all).indexOf(bands[0]?.band ?? ''));
          },
          believe(tree, sightings, { pairs }),
        );
        const read = imagined.map((one) => ({
          ...one,
          bands: one.bands.slice(0, 1).map(({ band }) => ({ band, share: 1 })),
        }));
        expectClose(believe(tree, [...sightings, ...read], { pairs }).shares, belief.shares);
      }),
      { numRuns: 50 },
    );
  });
});

describe('movesOf()', () => {
  test('tells moves that add up to the whole change of the odds', () => {
    fc.assert(
      fc.property(seeds, fc.boolean(), (seed, pairs) => {
        const rolls = dice(seed);
        const tree = randomBeliefTree(rolls, { readings: 6, faults: 4 }, everything);
        const sightings = randomSightings(rolls, tree, 6, { running: true, mended: true });
        const prior = believe(tree, [], { pairs });
        const belief = believe(tree, sightings, { pairs });
        belief.shares.forEach((share, at) => {
          const moved = movesOf(belief, at).reduce((sum, { logOdds }) => sum + logOdds, 0);
          const change = logit(share) - logit(prior.shares[at] ?? 0);
          expect(Math.abs(moved - change)).toBeLessThan(1e-6 * Math.max(1, Math.abs(change)));
        });
      }),
      { numRuns: 60 },
    );
  });
});

const now = { board: 'failing', alsoPresent: [], entry: null } as const;
const logit = (share: number): number => Math.log(share / (1 - share));
