import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allNormal, eachBandOf, eachBands } from '../../../engine/scale/each-bands.ts';
import { groupBands } from '../../../engine/scale/group-bands.ts';
import { type BandShare, groupShares } from '../../../engine/scale/group-shares.ts';
import { readingOf } from './quantity-reading.ts';

const names = ['moves', 'sags', 'stuck', 'floats'];

const groupOf = (size: number, normal: readonly string[]) => {
  const measure = {
    kind: 'each',
    members: Array.from({ length: size }, (_, at) => `A${at}`),
    of: { kind: 'options', options: names.map((name) => ({ name, means: null })) },
    normal,
    bands: eachBands(size, names, normal),
  } as const;
  return { measure, reading: readingOf(measure, [allNormal]) };
};

const shares: fc.Arbitrary<readonly BandShare[]> = fc.subarray(names, { minLength: 1 }).chain((bands) =>
  fc
    .array(fc.integer({ min: 1, max: 9 }), { minLength: bands.length, maxLength: bands.length })
    .map((parts) => {
      const whole = parts.reduce((sum, part) => sum + part, 0);
      return bands.map((band, at) => ({ band, share: (parts[at] ?? 0) / whole }));
    }),
);

const group = fc.tuple(
  fc.array(shares, { minLength: 2, maxLength: 5 }),
  fc.subarray(names, { minLength: 1, maxLength: 2 }),
);

/** Every combination of the members' bands, and how likely it is. */
const combinations = (members: readonly (readonly BandShare[])[]) =>
  members.reduce<readonly { readonly found: readonly string[]; readonly share: number }[]>(
    (sofar, member) =>
      sofar.flatMap(({ found, share }) =>
        member.map((one) => ({ found: found.concat(one.band), share: share * one.share })),
      ),
    [{ found: [], share: 1 }],
  );

describe('the laws of many alike', () => {
  test('the parts of the bands of the whole are those of all combinations of its members', () => {
    fc.assert(
      fc.property(group, ([members, normal]) => {
        const { measure, reading } = groupOf(members.length, normal);
        const expected = new Map<string, number>();
        for (const { found, share } of combinations(members)) {
          const band = eachBandOf(measure, found, names);
          expected.set(band, (expected.get(band) ?? 0) + share);
        }
        const found = groupShares(reading, members);
        expect(found.map(({ band }) => band)).toEqual(measure.bands.filter((band) => expected.has(band)));
        for (const { band, share } of found) expect(share).toBeCloseTo(expected.get(band) ?? -1, 10);
      }),
      { numRuns: 500 },
    );
  });

  test('64 members of which each can be in any band are no more than a moment', () => {
    const { measure, reading } = groupOf(64, ['moves']);
    const open = measure.members.map(() => ({ bands: names }));
    expect(groupBands(reading, open)).toEqual(measure.bands);
  });
});
