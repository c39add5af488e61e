import { describe, expect, test } from 'vitest';
import type { Check } from '../../../engine/next/index.ts';
import { tablesOf } from '../../../engine/next/tables.ts';
import { bandsOf } from '../../../engine/scale/index.ts';
import type { Belief } from '../../../engine/suspects/belief.ts';
import { believe } from '../../../engine/suspects/believe.ts';
import { dice } from '../../helpers/dice.ts';
import { shippedTrees } from '../../helpers/shipped-trees.ts';
import { sightingOf } from '../../helpers/suspect-models.ts';

describe.each(shippedTrees)('the tables of beliefs on $id', ({ tree }) => {
  if (tree === null) throw new Error('expected a shipped tree to compile');

  test('say the same as the beliefs themselves, whatever was read', () => {
    const { upTo, pick } = dice(4);
    for (let round = 0; round < 7; round += 1) {
      const taken = tree.readings.filter(({ from, call }) => from === null && !call);
      const seen = Array.from({ length: round }, () => {
        const reading = taken[upTo(taken.length)] ?? taken[0];
        if (reading === undefined) throw new Error('expected readings');
        const [band = '', ...others] = bandsOf(reading);
        return sightingOf(reading.id, pick([band, ...others]));
      });
      const belief = believe(tree, seen, { pairs: round === 3 && tree.faults.length < 20 });
      const checks = taken.map(
        (reading): Check => ({ reading, section: null, minutes: 1, wait: 0, changes: {} }),
      );
      const plain: Belief = {
        hypotheses: belief.hypotheses,
        shares: belief.shares,
        predict: (hypothesis, reading) => belief.predict(hypothesis, reading),
      };
      const [fast, slow] = [tablesOf(belief, checks), tablesOf(plain, checks)];
      expect(fast.places).toEqual(slow.places);
      expect(largestGap(fast.likely, slow.likely)).toBeLessThan(1e-12);
      expect(largestGap(fast.doubt, slow.doubt)).toBeLessThan(1e-12);
      expect(fast.groups).toEqual(slow.groups);
    }
  });
});

const largestGap = (a: Float64Array, b: Float64Array): number =>
  a.reduce((gap, value, at) => Math.max(gap, Math.abs(value - (b[at] ?? Number.NaN))), 0);
