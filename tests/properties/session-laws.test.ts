import { describe, test } from 'vitest';
import { benchTree } from '../helpers/bench.ts';
import { randomWalks } from './random-walks.ts';

describe('a session', () => {
  test('keeps its laws on 300 random walks (npm run soak walks more)', () => {
    randomWalks(benchTree(), 300);
  });
});
