import { describe, expect, test } from 'vitest';
import { minutesAlong } from '../helpers/along-the-tree.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';
import { lesson } from '../helpers/trainee.ts';

// Both stop at the same: the trainee when the suspects of one fault section have 90 %, the tree when its walk stands at the fault's section.
describe.each(shippedTrees)(
  'a trainee who takes what is proposed on $id (npm run soak follows rarer boards)',
  ({ tree }) => {
    if (tree === null) throw new Error('expected a shipped tree to compile');
    const along = minutesAlong(tree);
    const { minutes, right, stuck } = lesson(tree, { rare: 1.5e-3, byTree: along.ofFault });

    test('needs on the average no more minutes than the order of the tree', () => {
      expect(minutes).toBeGreaterThan(0);
      expect(minutes).toBeLessThanOrEqual(along.minutes);
    });

    test('names the right section on at least 95 boards of 100, and is seldom left without a proposal', () => {
      expect(right).toBeGreaterThan(0.95);
      expect(stuck).toBeLessThan(0.1);
    });
  },
);
