import { describe, expect, test } from 'vitest';
import { type Arc, pointOn } from '../../../player/parts/arc-geometry.ts';

const arc: Arc = { width: 600, rise: 30, left: 10, top: 50 };

describe('pointOn()', () => {
  test('begins and ends at the width of the arc, its rise lower than the middle', () => {
    const [start, middle, end] = [pointOn(arc, 0), pointOn(arc, 0.5), pointOn(arc, 1)];
    expect(start.x).toBeCloseTo(10, 6);
    expect(end.x).toBeCloseTo(610, 6);
    expect(middle).toEqual({ x: 310, y: 50 });
    expect(start.y).toBeCloseTo(80, 6);
    expect(end.y).toBeCloseTo(80, 6);
  });

  test('goes outwards square to the arc', () => {
    expect(pointOn(arc, 0.5, 10).y).toBeCloseTo(40, 6);
    expect(pointOn(arc, 0, 10).x).toBeLessThan(10);
  });
});
