import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pictureView } from '../../../player/parts/picture-view.ts';

const board = { width: 880, height: 1000 };
const part = fc.double({ min: 0, max: 1, noNaN: true });
const spots = fc.array(fc.record({ x: part, y: part }), { minLength: 1, maxLength: 4 });
const sizes = fc.record({
  width: fc.integer({ min: 1, max: 5000 }),
  height: fc.integer({ min: 1, max: 5000 }),
});

describe('pictureView()', () => {
  test('looks at one place from near, with the place in the middle', () => {
    const { x, y, width, height } = pictureView([{ x: 0.5, y: 0.5 }], board);
    expect(width).toBeLessThan(board.width * 0.6);
    expect([x + width / 2, y + height / 2]).toEqual([440, 500]);
  });

  test('stays on the picture where a place lies at its corner', () => {
    expect(pictureView([{ x: 0, y: 1 }], board)).toMatchObject({ x: 0, y: expect.closeTo(1000 - 316.8) });
  });

  test('shows the whole picture where two places lie far apart', () => {
    const far = [
      { x: 0.05, y: 0.05 },
      { x: 0.95, y: 0.95 },
    ];
    expect(pictureView(far, board)).toEqual({ x: 0, y: 0, ...board });
  });

  test('holds every place, inside every picture', () => {
    fc.assert(
      fc.property(spots, sizes, (all, size) => {
        const { x, y, width, height } = pictureView(all, size);
        const slack = 1e-6 * Math.max(size.width, size.height);
        expect(x).toBeGreaterThanOrEqual(0);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(x + width).toBeLessThanOrEqual(size.width + slack);
        expect(y + height).toBeLessThanOrEqual(size.height + slack);
        for (const spot of all) {
          expect(spot.x * size.width).toBeGreaterThanOrEqual(x - slack);
          expect(spot.x * size.width).toBeLessThanOrEqual(x + width + slack);
          expect(spot.y * size.height).toBeGreaterThanOrEqual(y - slack);
          expect(spot.y * size.height).toBeLessThanOrEqual(y + height + slack);
        }
      }),
    );
  });
});
