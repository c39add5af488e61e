import { expect, test } from 'vitest';
import { everySetting } from '../../../engine/cases/every-setting.ts';
import { type Arrival, everyWalk, walkFault } from '../../../engine/cases/walk-fault.ts';
import { pathOf } from '../../../engine/run/index.ts';
import { allChoices } from '../../helpers/all-choices.ts';
import { shippedTrees } from '../../helpers/shipped-trees.ts';

const most = 12;

const told = ({ arrived, session, refused }: Arrival) => ({
  arrived,
  refused,
  entries: session.entries,
  path: pathOf(session.position).map(({ id }) => id),
});

test('every walk comes out as if it were walked alone, in the order of its choices', () => {
  let seen = 0;
  for (const { tree } of shippedTrees) {
    if (tree === null) continue;
    const [settings = {}] = everySetting(tree);
    for (const fault of tree.faults.slice(0, 8)) {
      const together = everyWalk(tree, fault, settings);
      for (const choose of allChoices(most)) {
        const walked = walkFault(tree, fault, choose, settings);
        const next = together.next();
        expect(next.done, fault.id).toBe(false);
        expect(told(next.value as Arrival)).toEqual(told(walked));
        seen += 1;
      }
    }
  }
  expect(seen).toBeGreaterThan(16);
});

test('there are as many walks as there are ways to choose', () => {
  for (const { tree } of shippedTrees) {
    const fault = tree?.faults[0];
    if (!tree || fault === undefined) continue;
    let alone = 0;
    for (const choose of allChoices(200)) {
      walkFault(tree, fault, choose);
      alone += 1;
    }
    let together = 0;
    for (const _ of everyWalk(tree, fault)) {
      together += 1;
      if (together === 200) break;
    }
    expect(together).toBe(alone);
  }
});
