import { describe, expect, test } from 'vitest';
import { minutesAlong } from '../helpers/along-the-tree.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';
import { lesson } from '../helpers/trainee.ts';

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
