import { describe, test } from 'vitest';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import { benchTree, wholeTree } from '../helpers/bench.ts';
import { callTree } from '../helpers/call-tree.ts';
import { handingOver } from '../helpers/handing-over.ts';
import { randomWalks } from './random-walks.ts';

/** The same tree with narrower limits and one section under another name. */
const newerThan = (tree: CompiledTree): CompiledTree =>
  JSON.parse(
    JSON.stringify({ ...tree, digest: `${tree.digest}-newer` })
      .replaceAll('"19/4"', '"49/10"')
      .replaceAll('s-no-supply"', 's-supply-gone"')
      .replaceAll('"no-supply"', '"supply-gone"'),
  );

describe('a session (npm run soak walks more)', () => {
  test('keeps its laws on 150 random walks through a small tree', () => {
    randomWalks(benchTree(), 150);
  });

  test('keeps its laws on 150 random walks where readings are held back, arranged, computed and in doubt', () => {
    randomWalks(wholeTree(), 150);
  });

  test('keeps its laws on 60 random walks through calls', () => {
    randomWalks(callTree(), 60);
  });

  test('keeps its laws on 150 random walks from one tree to another and to newer ones', () => {
    const tree = handingOver(benchTree(), 'overvoltage', 'whole-tree');
    const whole = handingOver(wholeTree(), 'stop-here', 'bench-tree');
    randomWalks(tree, 150, { laterTrees: [whole, newerThan(tree), newerThan(whole)] });
  });
});
