import { describe, expect, test } from 'vitest';
import {
  clearProgress,
  keepOutcome,
  type Outcome,
  progressOf,
} from '../../../../player/models/practice/progress.ts';
import { memoryPracticeShelf } from '../../../../player/ports/memory-practice-shelf.ts';

const outcome = (more: Partial<Outcome>): Outcome => ({
  format: 1,
  at: '2031-04-05T18:30:00+02:00',
  family: 'clock',
  rightAtFirst: true,
  hints: 0,
  minutes: 20,
  best: 10,
  ...more,
});

describe('progressOf()', () => {
  test('counts boards, right at first, without hints, and time against the best checks, family by family', () => {
    const shelf = memoryPracticeShelf();
    keepOutcome(shelf, 'a', outcome({}));
    keepOutcome(shelf, 'b', outcome({ rightAtFirst: false, minutes: 40 }));
    keepOutcome(shelf, 'c', outcome({ hints: 1, minutes: 30 }));
    keepOutcome(shelf, 'd', outcome({ family: 'contacts', best: null }));
    expect(progressOf(shelf)).toEqual([
      { family: 'clock', drills: 3, rightAtFirst: 2, unaided: 1, against: 3 },
      { family: 'contacts', drills: 1, rightAtFirst: 1, unaided: 1, against: null },
    ]);
  });

  test('counts a board once: the first time stands', () => {
    const shelf = memoryPracticeShelf();
    keepOutcome(shelf, 'a', outcome({ rightAtFirst: false }));
    keepOutcome(shelf, 'a', outcome({ rightAtFirst: true }));
    expect(progressOf(shelf)).toMatchObject([{ drills: 1, rightAtFirst: 0 }]);
  });

  test('is empty again once it is cleared, and drills in progress stay', () => {
    const shelf = memoryPracticeShelf();
    keepOutcome(shelf, 'a', outcome({}));
    shelf.write('drill.a', '{}');
    clearProgress(shelf);
    expect(progressOf(shelf)).toEqual([]);
    expect(shelf.names()).toEqual(['drill.a']);
  });

  test('passes over what it cannot read', () => {
    const shelf = memoryPracticeShelf();
    for (const [name, text] of Object.entries({ a: '', b: '{', c: '{"format":2}', d: 'null' }))
      shelf.write(`outcome.${name}`, text);
    expect(progressOf(shelf)).toEqual([]);
  });

  test('says where the browser keeps nothing', () => {
    const shelf = memoryPracticeShelf();
    shelf.full = true;
    expect(keepOutcome(shelf, 'a', outcome({}))).toBe(false);
  });
});
