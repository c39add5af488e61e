import { expect, test } from 'vitest';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import { paperOf } from '../../../engine/paper/index.ts';
import { broughtText } from '../../../engine/suspects/brought-text.ts';
import { shippedTrees } from '../../helpers/shipped-trees.ts';

const tree = shippedTrees.find(({ id }) => id === 'no-post-586')?.tree as CompiledTree;
const faultNamed = (id: string) => tree.faults.find((fault) => fault.id === id) as CompiledTree['faults'][0];

test('a remedy says what else may have died, likeliest first, in shares of its cases', () => {
  const pass = { ...faultNamed('core_pass'), brings: { dead_cpu: 0.125, chip_set: 0.4 } };
  expect(broughtText(pass, tree.faults)).toBe(
    'Before a spare goes in, look for what this may have left behind: The chip set holds the CPU, or does not answer it (in 40 % of such cases); The CPU itself is dead (in 12.5 % of such cases)',
  );
});

test('a remedy says nothing where the fault leaves nothing behind', () => {
  expect(broughtText(faultNamed('crystal'), tree.faults)).toBe('');
});

test('on paper it stands with the remedy', () => {
  const page = paperOf(tree).replaceAll(/\s+/g, ' ');
  expect(page).toContain(
    '<p>Before a spare goes in, look for what this may have left behind: The CPU itself is dead (in 40 % of such cases).</p>',
  );
  const without = { ...tree, faults: tree.faults.map(({ brings: _, ...fault }) => fault) };
  expect(paperOf(without)).not.toContain('left behind');
});
