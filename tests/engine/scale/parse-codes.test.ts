import { describe, expect, test } from 'vitest';
import { parseCodes } from '../../../engine/scale/index.ts';

const parse = (...keys: readonly string[]) =>
  parseCodes(keys.map((key, at) => ({ key, band: `band-${at}`, means: null })));

describe('parseCodes()', () => {
  test('reads codes, runs in both notations and words for a dark display', () => {
    const { measure, problems } = parse('00', '01..1f', '20-2F', 'none', 'blank');
    expect(problems).toEqual([]);
    expect(measure.ranges.map(({ from, to }) => `${from}-${to}`)).toEqual([
      '00-00',
      '01-1F',
      '20-2F',
      'none-none',
      'blank-blank',
    ]);
    expect(measure.digits).toBe(2);
  });

  test('lists bands in order of first mention, with the built-in one last', () => {
    const { measure } = parseCodes([
      { key: '00', band: 'stuck', means: null },
      { key: '01', band: 'other', means: 'listed as other' },
      { key: '02', band: 'memory', means: null },
      { key: '03', band: 'stuck', means: null },
    ]);
    expect(measure.bands).toEqual(['stuck', 'memory', 'other']);
    expect(parse().measure).toEqual({ kind: 'codes', digits: 2, ranges: [], bands: ['other'] });
  });

  test('takes as many digits as the first code has', () => {
    expect(parse('none', '0000', '0001..FFFF').measure.digits).toBe(4);
    expect(parse('00', '1').problems).toEqual([
      { entry: 1, problem: { code: 'code-shape', from: 0, to: 1, found: '1', digits: 2 } },
    ]);
  });

  test.each(['zz', '', '1F..01', '0..1F', '01..', '0x1F', '123456789', '01 02'])(
    'refuses the key "%s"',
    (key) => {
      expect(parse(key).problems).toMatchObject([
        { entry: 0, problem: { code: 'code-shape', found: key, digits: null } },
      ]);
    },
  );

  test('finds every overlap and names both rows', () => {
    expect(parse('10..2F', '00..10', '2F', '30', 'none', 'none').problems).toEqual([
      { entry: 1, problem: { code: 'code-overlap', from: 0, to: 6, found: '00..10', other: '10..2F' } },
      { entry: 2, problem: { code: 'code-overlap', from: 0, to: 2, found: '2F', other: '10..2F' } },
      { entry: 5, problem: { code: 'code-overlap', from: 0, to: 4, found: 'none', other: 'none' } },
    ]);
    expect(parse('00..FF', '10', '20').problems.map(({ entry }) => entry)).toEqual([1, 2]);
  });
});
