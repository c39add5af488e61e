import { describe, expect, test } from 'vitest';
import { knownGood } from '../../../player/models/known-good.ts';
import { benchTree, walkWith, wholeTree } from '../../helpers/bench.ts';
import { benchSheet } from '../helpers/bench-sheet.ts';

const ask = (tree: ReturnType<typeof benchTree>, reading: string, ...answers: readonly string[]) => {
  const session = walkWith(tree, { board: benchSheet(), laterTrees: [] }, 'open: Board 7; ; ', ...answers);
  const found = session.loaded.readings.get(reading);
  return found === undefined ? undefined : knownGood(session, found);
};

describe('knownGood()', () => {
  test('tells what the sheet has, the last day first, with day and instrument', () => {
    expect(ask(benchTree(), 'v5')).toEqual({
      decides: false,
      shown: [
        { value: '5 V', from: 'board sheet, 2026-05-09, hand meter' },
        { value: '5.02 V', from: 'board sheet, 2026-03-02, bench meter' },
      ],
    });
  });

  test('says that it decides where limits rest on it, before and after it is read', () => {
    expect(ask(wholeTree(), 'ref_swing')).toEqual({ decides: true, shown: [] });
    expect(ask(wholeTree(), 'ref_swing', 'twin ref_swing = 1,2 Vpp')).toEqual({
      decides: true,
      shown: [{ value: '1.2 Vpp', from: 'read in this job' }],
    });
  });

  test('is silent where nothing is known and nothing rests on it, and for what is no quantity', () => {
    expect(ask(benchTree(), 'pg')).toBe(null);
    expect(ask(benchTree(), 'post_code')).toBe(null);
  });
});
