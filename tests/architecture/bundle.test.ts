import { describe, expect, test } from 'vitest';
import { firstLoad } from '../helpers/first-load.ts';

describe("the player's first load", () => {
  const { script } = firstLoad();

  test('is a script of at most 60 KB gzipped', () => {
    expect(script.files.length).toBeGreaterThan(0);
    expect(script.gzip).toBeLessThanOrEqual(60 * 1024);
  });

  test.each(['micromark', 'mdast', 'failsafe', 'BLOCK_AS_IMPLICIT_KEY', 'ajv', 'codemirror'])(
    'holds nothing of %s',
    (name) => {
      expect(script.text.includes(name)).toBe(false);
    },
  );
});
