import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { relativePath } from '../../../engine/library/relative-path.ts';
import { idOfPath, resolvePath } from '../../../engine/library/resolve-path.ts';

const step = fc.constantFrom('a', 'b', 'trees', 'common');
const path = fc.array(step, { minLength: 1, maxLength: 5 }).map((steps) => `${steps.join('/')}.md`);

describe('paths of a library', () => {
  test.each([
    ['trees/a.md', 'procedures/b.md', '../procedures/b.md'],
    ['trees/a.md', 'trees/b.md', 'b.md'],
    ['a.md', 'common/rails.md', 'common/rails.md'],
    ['x/y/a.md', 'b.md', '../../b.md'],
    ['trees/a.md', 'trees', '../trees'],
  ])('lead from %s to %s by %s', (from, to, way) => {
    expect(relativePath(from, to)).toBe(way);
  });

  test('lead back to where they were made from', () => {
    fc.assert(
      fc.property(path, path, (from, to) => {
        expect(resolvePath(from, relativePath(from, to))).toBe(to);
      }),
    );
  });

  test('never lead out of the library', () => {
    expect(resolvePath('trees/a.md', '../../b.md')).toBeNull();
    expect(resolvePath('a.md', '../b.md')).toBeNull();
  });

  test('give the id of what a file holds', () => {
    expect(idOfPath('trees/no-post-586.md')).toBe('no-post-586');
    expect(idOfPath('a.b.md')).toBe('a.b');
  });
});
