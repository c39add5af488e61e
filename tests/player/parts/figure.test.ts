import { describe, expect, test } from 'vitest';
import { asShown } from '../../../player/parts/as-shown.ts';
import { splitFigure } from '../../../player/parts/figure.tsx';

describe('splitFigure()', () => {
  test.each([
    ['25.2 MHz', '25.2', 'MHz'],
    ['-12 V dc', '-12', 'V dc'],
    ['> 200 kΩ', '> 200', 'kΩ'],
    ['39.6 … 40.4 MHz', '39.6 … 40.4', 'MHz'],
    ['at least 4 V', 'at least 4', 'V'],
    ['steady', 'steady', ''],
    ['0D', '0D', ''],
    ['done (FF)', 'done (FF)', ''],
  ])('splits "%s"', (text, number, unit) => {
    expect(splitFigure(text)).toEqual({ number, unit });
  });
});

describe('asShown()', () => {
  test('writes a unit that both ends share once', () => {
    expect(asShown('39.6 MHz .. 40.4 MHz')).toBe('39.6 … 40.4\u00a0MHz');
  });

  test('keeps units that differ', () => {
    expect(asShown('900 Ω .. 1.1 kΩ')).toBe('900\u00a0Ω … 1.1\u00a0kΩ');
  });

  test('leaves words alone and keeps a number and its unit on one line', () => {
    expect(asShown('steady')).toBe('steady');
    expect(asShown('at most 0.7 V')).toBe('at most 0.7\u00a0V');
  });
});
