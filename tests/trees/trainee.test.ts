import { describe, expect, test } from 'vitest';
import { figuresOf } from '../../engine/figures/figures-of.ts';
import { minutesAlong } from '../helpers/along-the-tree.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';
import { lesson } from '../helpers/trainee.ts';
import { withoutSlips } from '../helpers/without-slips.ts';

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

// The whole of memory has its best order found exactly in npm run soak.
test('a trainee who takes what is proposed needs at most 10 % more than the best order, for the six heaviest faults of memory', () => {
  const whole = shippedTrees.find(({ id }) => id === 'memory')?.tree ?? null;
  if (whole === null) throw new Error('expected memory to compile');
  const tree = withoutSlips(whole, 6);
  const { best } = figuresOf(tree);
  expect(best.exact).toBe(true);
  const { minutes } = lesson(tree, { byTree: () => 0 });
  expect(minutes).toBeGreaterThanOrEqual(best.low - 1e-9);
  expect(minutes).toBeLessThanOrEqual(best.low * 1.1);
});

test('what is proposed can be taken there and then, also among few faults of a large tree', () => {
  const whole = shippedTrees.find(({ id }) => id === 'no-post-586')?.tree ?? null;
  if (whole === null) throw new Error('expected no-post-586 to compile');
  expect(lesson(withoutSlips(whole, 5), { byTree: () => 0 }).right).toBe(1);
});
