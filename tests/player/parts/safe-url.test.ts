import { describe, expect, test } from 'vitest';
import { imageUrl, linkUrl } from '../../../player/parts/safe-url.ts';

describe('linkUrl()', () => {
  test.each(['https://example.org/a', 'HTTP://example.org', 'mailto:a@example.org'])('follows %s', (url) => {
    expect(linkUrl(url)).toBe(url);
  });

  test.each([
    'javascript:alert(1)',
    ' javascript:alert(1)',
    'java\nscript:alert(1)',
    '\u0001javascript:alert(1)',
    'JaVaScRiPt:alert(1)',
    'data:text/html,x',
    'vbscript:x',
    'blob:https://example.org/1',
    'file:///etc/passwd',
    '#another-section',
    'other-tree.md',
  ])('does not follow %j', (url) => {
    expect(linkUrl(url)).toBeNull();
  });
});

describe('imageUrl()', () => {
  test.each(['pictures/board.png', './a.png', 'https://example.org/a.png'])('shows %s', (url) => {
    expect(imageUrl(url)).toBe(url);
  });

  test.each(['javascript:alert(1)', 'data:image/svg+xml,<svg/>', '//elsewhere.example/a.png', 'blob:x'])(
    'does not show %j',
    (url) => {
      expect(imageUrl(url)).toBeNull();
    },
  );
});
