import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bandPath,
  corePath,
  minuteTicks,
  type NarrowingFrame,
  rowsOfMarks,
  xOf,
} from '../../../player/parts/narrowing-geometry.ts';

const frame: NarrowingFrame = { left: 10, width: 200, middle: 50, half: 40, minutes: 20, bits: 4 };

const pointsOf = (path: string) =>
  path
    .replace(/^M|Z$/g, '')
    .split('L')
    .map((point) => point.split(' ').map(Number));

describe('bandPath()', () => {
  test('is as high as what is open, around the middle, and ends in a line where nothing is', () => {
    const moments = [
      { minute: 0, bits: 4, right: 0.1 },
      { minute: 10, bits: 2, right: 0.5 },
      { minute: 20, bits: 0, right: 1 },
    ];
    expect(pointsOf(bandPath(frame, moments))).toEqual([
      [10, 10],
      [110, 30],
      [210, 50],
      [210, 50],
      [110, 70],
      [10, 90],
    ]);
  });

  test('holds the true cause inside it', () => {
    const moment = fc.record({
      minute: fc.integer({ min: 0, max: 20 }),
      bits: fc.double({ min: 0, max: 4, noNaN: true }),
      right: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(moment, { minLength: 1 }), (moments) => {
        const [band, core] = [pointsOf(bandPath(frame, moments)), pointsOf(corePath(frame, moments))];
        for (const [index, [, y = 0]] of core.entries())
          expect(Math.abs(y - frame.middle)).toBeLessThanOrEqual(
            Math.abs((band[index]?.[1] ?? 0) - frame.middle) + 0.1,
          );
      }),
    );
  });
});

describe('xOf()', () => {
  test('never leaves the frame', () => {
    expect([-5, 0, 20, 99].map((minute) => xOf(frame, minute))).toEqual([10, 10, 210, 210]);
  });
});

describe('minuteTicks()', () => {
  test('stand at least so far apart, from 0 to the end', () => {
    expect(minuteTicks(frame, 40)).toEqual([0, 5, 10, 15, 20]);
    expect(minuteTicks(frame, 90)).toEqual([0, 10, 20]);
  });
});

describe('rowsOfMarks()', () => {
  test('puts marks that would touch below each other', () => {
    expect(rowsOfMarks([0, 5, 8, 30, 36], 20)).toEqual([0, 1, 2, 0, 1]);
  });
});
