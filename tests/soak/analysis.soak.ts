import fc from 'fast-check';
import { test } from 'vitest';
import { compareFaults, comparePaths } from '../engine/analysis/against-enumeration.ts';

test('the analysis of 20,000 random small trees reaches, takes and leaves what walking board by board does', () => {
  fc.assert(fc.property(fc.nat(), comparePaths), { numRuns: 20_000 });
});

test('the walks of every fault of 20,000 random small trees end where walking board by board does', () => {
  fc.assert(fc.property(fc.nat(), compareFaults), { numRuns: 20_000 });
});
