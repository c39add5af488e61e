import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countIn, proofLeft, triesLeft } from '../../../player/models/tries-left.ts';

describe('triesLeft()', () => {
  test.each([
    [0, 0, '20 alike in a row settle it; one of each settles it at once'],
    [3, 3, '17 more without a failure settle it'],
    [19, 19, '1 more without a failure settles it'],
    [0, 19, '1 more that fails too settles it'],
    [0, 5, '15 more that fail too settle it'],
  ])('of %i of %i is "%s"', (good, of, words) => {
    expect(triesLeft({ good, of }, 20)).toBe(words);
  });

  test('is nothing exactly where one of each was seen or there were enough', () => {
    fc.assert(
      fc.property(fc.nat(40), fc.nat(40), fc.integer({ min: 1, max: 40 }), (good, failed, enough) => {
        const of = good + failed;
        expect(triesLeft({ good, of }, enough) === null).toBe(
          of > 0 && ((good > 0 && failed > 0) || of >= enough),
        );
      }),
    );
  });
});

describe('proofLeft()', () => {
  test('ends with the first failure or the last success', () => {
    expect(proofLeft({ good: 0, of: 0 }, 20)).toBe('20 in a row must work');
    expect(proofLeft({ good: 12, of: 12 }, 20)).toBe('8 more must work');
    expect(proofLeft({ good: 20, of: 20 }, 20)).toBeNull();
    expect(proofLeft({ good: 4, of: 5 }, 20)).toBeNull();
  });
});

describe('countIn()', () => {
  test.each([
    ['3 of 10', 3, 10],
    [' 3/10 ', 3, 10],
    ['', 0, 0],
    ['three', 0, 0],
    ['11 of 10', 0, 0],
  ])('of "%s" is %i of %i', (typed, good, of) => {
    expect(countIn(typed)).toEqual({ good, of });
  });
});
