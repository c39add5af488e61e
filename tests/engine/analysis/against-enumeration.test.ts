import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareFaults, comparePaths, met } from './against-enumeration.ts';

const runs = 500;

describe('the analysis of random small trees', () => {
  test('reaches, takes and leaves what walking board by board does', () => {
    fc.assert(fc.property(fc.nat(), comparePaths), { numRuns: runs });
  });

  test('ends the walks of every fault where walking board by board does, in the same shares', () => {
    fc.assert(fc.property(fc.nat(), compareFaults), { numRuns: runs });
  });

  test('meets everything there is to tell apart', () => {
    const counts = met(Array.from({ length: 200 }, (_, seed) => seed));
    for (const what of [
      'sections not reached',
      'dead outcomes',
      'uncovered checks',
      'checks with something known',
      'found',
      'misled',
      'partly found',
      'other-fault',
      'stop',
      'hand-over',
      'round',
      'held',
      'nowhere',
    ])
      expect(counts[what] ?? 0, what).toBeGreaterThan(5);
  });
});
