import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareFaults, comparePaths, comparePathsCutShort, met } from './against-enumeration.ts';

const runs = 500;

describe('the analysis of random small trees', () => {
  test('reaches, takes and leaves what walking board by board does', () => {
    fc.assert(fc.property(fc.nat(), comparePaths), { numRuns: runs });
  });

  test.each([
    ['every section is entered with one set of bands', { steps: 400_000, variants: 1 }],
    ['every section is looked at alone', { steps: 0, variants: 64 }],
  ])('leaves out no walk where %s', (_, limits) => {
    fc.assert(
      fc.property(fc.nat(), (seed) => comparePathsCutShort(seed, limits)),
      { numRuns: 150 },
    );
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
