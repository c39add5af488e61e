import { expect, test } from 'vitest';
import { safePictureUrl } from '../../../player/parts/safe-picture-url.ts';

test.each([
  'data:image/svg+xml;base64,PHN2Zy8+',
  'data:image/png;base64,AAAA',
  'data:image/jpeg;base64,AAAA',
])('safePictureUrl() lets a picture through that is in the sheet itself: %s', (url) => {
  expect(safePictureUrl(url)).toBe(url);
});

test.each([
  'https://example.org/board.png',
  '//example.org/board.png',
  'top.png',
  'javascript:alert(1)',
  'data:text/html;base64,PGI+',
  ' data:image/png;base64,AAAA',
])('safePictureUrl() fetches nothing from elsewhere: %s', (url) => {
  expect(safePictureUrl(url)).toBe(null);
});
