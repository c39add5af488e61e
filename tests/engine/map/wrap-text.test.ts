import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textWidth } from '../../../engine/map/text-width.ts';
import { wrapText } from '../../../engine/map/wrap-text.ts';

describe('wrapText()', () => {
  test('breaks between words and behind hyphens', () => {
    expect(wrapText('Core voltage at the empty socket', 120, 14)).toEqual([
      'Core voltage at',
      'the empty socket',
    ]);
    expect(wrapText('single-rail links', 75, 14)).toEqual(['single-rail', 'links']);
  });

  test('breaks a word that is longer than a line', () => {
    const lines = wrapText('a'.repeat(100), 100, 14);
    expect(lines.length).toBeGreaterThan(5);
    expect(lines.join('')).toBe('a'.repeat(100));
  });

  test('keeps every sign, and no line wider than it may be unless one sign is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (text) => {
        const lines = wrapText(text, 100, 14);
        expect(lines.join('').replace(/\s/g, '')).toBe(text.replace(/\s/g, ''));
        for (const line of lines)
          expect(
            [...line].length === 1 ||
              [...new Intl.Segmenter().segment(line)].length === 1 ||
              textWidth(line, 14) <= 100,
          ).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });
});
