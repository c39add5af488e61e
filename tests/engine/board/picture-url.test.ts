import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pictureUrl } from '../../../engine/library/picture-url.ts';

describe('pictureUrl()', () => {
  test('names the kind of picture by the ending of its file', () => {
    const none = new Uint8Array();
    expect(pictureUrl('a/b.svg', none)).toBe('data:image/svg+xml;base64,');
    expect(pictureUrl('b.JPG', none)).toBe('data:image/jpeg;base64,');
    expect(pictureUrl('b.png', none)).toBe('data:image/png;base64,');
  });

  test('holds the very bytes of the file', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), fc.nat(3), (piece, times) => {
        const bytes = Buffer.concat(Array(1 + times * 50).fill(Buffer.from(piece)));
        const [, text = ''] = pictureUrl('b.png', bytes).split(',');
        expect(Buffer.from(text, 'base64').equals(bytes)).toBe(true);
      }),
    );
  });
});
