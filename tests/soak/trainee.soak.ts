import { describe, expect, test } from 'vitest';
import { figuresOf } from '../../engine/figures/figures-of.ts';
import { minutesAlong } from '../helpers/along-the-tree.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';
import { lesson } from '../helpers/trainee.ts';
import { withoutSlips } from '../helpers/without-slips.ts';

describe.each(shippedTrees)('a trainee who takes what is proposed on $id', ({ id, tree }) => {
  test('needs on the average no more minutes than the order of the tree, down to one board in 100,000', () => {
    if (tree === null) throw new Error('expected a shipped tree to compile');
    const along = minutesAlong(tree);
    const learnt = lesson(tree, { rare: 1e-5, byTree: along.ofFault });
    const { minutes, checks, right, stuck, leftOut, points } = learnt;
    console.log(
      `${id}: ${minutes.toFixed(2)} minutes and ${checks.toFixed(1)} checks, by the tree ${along.minutes.toFixed(2)} minutes; ` +
        `named right ${(right * 100).toFixed(2)} %, nothing left to propose ${(stuck * 100).toFixed(2)} %, ` +
        `by the tree in the end ${(leftOut * 100).toFixed(2)} %; ${points} points`,
    );
    expect(minutes).toBeLessThanOrEqual(along.minutes);
    expect(right).toBeGreaterThan(0.95);
  });
});

test('a trainee who takes what is proposed needs at most 10 % more than the best order of memory, which is found exactly', () => {
  const whole = shippedTrees.find(({ id }) => id === 'memory')?.tree ?? null;
  if (whole === null) throw new Error('expected memory to compile');
  const tree = withoutSlips(whole);
  const { best } = figuresOf(tree, { budget: 300_000 });
  const { minutes } = lesson(tree, { byTree: () => 0 });
  console.log(
    `memory without slips: ${minutes.toFixed(2)} minutes, the best order ${best.low.toFixed(2)} (${best.looked} states)`,
  );
  expect(best.exact).toBe(true);
  expect(minutes).toBeLessThanOrEqual(best.low * 1.1);
});
