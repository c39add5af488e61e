import { describe, expect, test } from 'vitest';
import { isImageAddress, isLinkAddress } from '../../../engine/read/prose/addresses.ts';

const base64 = (text: string): string => btoa(text);

describe('isLinkAddress()', () => {
  test.each([
    'http://a.example/b',
    'HTTPS://a.example',
    'mailto:a@b.example',
    '#power-good',
    'other.md',
    '../common/rails.md',
    'rails.md#3-v',
  ])('lets a link lead to %s', (url) => {
    expect(isLinkAddress(url)).toBe(true);
  });

  test.each([
    '',
    'javascript:alert(1)',
    'JAVASCRIPT:x',
    'java\nscript:x',
    'data:text/html,x',
    'file:///etc',
    'vbscript:x',
    '//a.example/b.md',
    '/b.md',
    '\\\\a\\b.md',
    'b.html',
    'b',
    'http:b.md',
    ' javascript:x.md',
    'javascript:x.md',
  ])('lets no link lead to "%s"', (url) => {
    expect(isLinkAddress(url)).toBe(false);
  });
});

describe('isImageAddress()', () => {
  test.each([
    'board.png',
    '../pictures/board%201.jpg',
    'data:image/png;base64,AAAA',
    'data:image/jpeg;base64,AAAA',
    'data:image/svg+xml,%3Csvg%3E%3C/svg%3E',
    `data:image/svg+xml;base64,${base64('<svg><path d="M0 0"/></svg>')}`,
  ])('lets a picture come from %s', (url) => {
    expect(isImageAddress(url)).toBe(true);
  });

  test.each([
    'http://a.example/b.png',
    '//a.example/b.png',
    '/b.png',
    'javascript:x',
    'data:text/html,<b>',
    'data:image/gif;base64,AAAA',
    'data:image/svg+xml,%3Csvg%3E%3Cscript%3Ex%3C/script%3E%3C/svg%3E',
    'data:image/svg+xml,<svg onload=x>',
    `data:image/svg+xml;base64,${base64('<svg><a href="javascript:x"/></svg>')}`,
    'data:image/svg+xml;base64,%%%',
  ])('lets no picture come from %s', (url) => {
    expect(isImageAddress(url)).toBe(false);
  });
});
