import { describe, expect, test } from 'vitest';
import { everySetting } from '../../engine/cases/every-setting.ts';
import { walkFault } from '../../engine/cases/walk-fault.ts';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import { allChoices } from '../helpers/all-choices.ts';
import { benchTree, wholeTree } from '../helpers/bench.ts';
import { callTree } from '../helpers/call-tree.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';
import { mangledFiles } from '../properties/mangled-files.ts';
import { mangledJobs } from '../properties/mangled-jobs.ts';
import { mangledTexts } from '../properties/mangled-texts.ts';
import { randomWalks } from '../properties/random-walks.ts';
import { slicingLaw } from '../properties/slicing-law.ts';

test('compileTree() keeps its laws on 100,000 mangled texts', () => {
  mangledTexts(100_000);
});

test('checkFile() keeps its laws on 20,000 mangled files of every kind', () => {
  mangledFiles(20_000);
});

test('a job file is refused in words or can be walked on, 50,000 times mangled', () => {
  mangledJobs(50_000);
});

test('100,000 random bodies give the same syntax in slices as in one piece', () => {
  slicingLaw(100_000);
});

test('a session keeps its laws on 20,000 random walks', () => {
  randomWalks(benchTree(), 20_000);
});

test('a session keeps its laws on 10,000 random walks where readings are held back, arranged, computed and in doubt', () => {
  randomWalks(wholeTree(), 10_000);
});

test('a session keeps its laws on 5,000 random walks through calls', () => {
  randomWalks(callTree(), 5000);
});

describe.each(shippedTrees)('$id', ({ tree }) => {
  const compiled = tree as CompiledTree;

  test('keeps the laws of a session on 2,000 random walks', () => {
    randomWalks(compiled, 2000);
  });

  test.each(compiled.faults)('arrives at $id with 5,000 choices of the bands it can show', (fault) => {
    for (const settings of everySetting(compiled)) {
      for (const choose of allChoices(5000)) {
        expect(walkFault(compiled, fault, choose, settings).arrived).toBe(true);
      }
    }
  });
});
