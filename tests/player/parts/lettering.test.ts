import { describe, expect, test } from 'vitest';
import { placeLettering } from '../../../player/parts/lettering.ts';

const word = (text: string, x: number) => ({ text, x, share: x / 600 });

describe('placeLettering()', () => {
  test('leaves words on one row where they have room', () => {
    const rows = placeLettering([word('low', 100), word('good', 300), word('high', 500)], 16, 600);
    expect(rows.map(({ row }) => row)).toEqual([0, 0, 0]);
  });

  test('moves every second word back where two would touch', () => {
    const rows = placeLettering([word('shorted', 60), word('in between', 110), word('open', 160)], 16, 220);
    expect(rows.map(({ row }) => row)).toEqual([0, 1, 0]);
  });

  test('keeps words inside of the face', () => {
    const [first, last] = placeLettering([word('unconnected', 2), word('unconnected', 598)], 16, 600);
    expect(first?.x).toBeGreaterThan(40);
    expect(last?.x).toBeLessThan(560);
  });
});
