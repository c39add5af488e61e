import { describe, expect, test } from 'vitest';
import { expectedText, observationText, observe } from '../../../engine/scale/index.ts';
import { readingOf, settingsOf, taken } from './quantity-reading.ts';

describe('observe() of tries', () => {
  const reading = readingOf({ kind: 'tries', enough: 20 }, ['always']);
  const look = (typed: string) => observe(reading, settingsOf({}), typed);

  test.each([
    ['3 of 10', 3, 10, 'sometimes'],
    ['3/10', 3, 10, 'sometimes'],
    ['3 out of 10 tries', 3, 10, 'sometimes'],
    ['20 of 20', 20, 20, 'always'],
    ['all of 25', 25, 25, 'always'],
    ['0 of 20', 0, 20, 'never'],
    ['none of 30', 0, 30, 'never'],
    ['10 of 10', 10, 10, 'sometimes|always'],
    ['0 of 3', 0, 3, 'never|sometimes'],
    ['1 of 1', 1, 1, 'sometimes|always'],
    ['1 of 20', 1, 20, 'sometimes'],
  ])('counts "%s"', (typed, good, of, bands) => {
    const seen = taken(look(typed));
    expect(seen.understood).toEqual({ kind: 'tries', good, of });
    expect(seen.bands.join('|')).toBe(bands);
    expect(observationText(seen)).toBe(`${good} of ${of}`);
  });

  test('says of too few tries what could still slip through', () => {
    // 1 − 0.05^(1/10) = 0.259; source: binomial distribution, computed
    expect(taken(look('10 of 10')).remarks).toEqual([
      'A failure that comes in 26 % of the tries would go unseen in 10 tries one time in twenty: 20 in a row settle it',
    ]);
    expect(taken(look('0 of 1')).remarks).toEqual([
      'A success that comes in 95 % of the tries would go unseen in one try one time in twenty: 20 in a row settle it',
    ]);
    expect(taken(look('20 of 20')).remarks).toEqual([]);
    expect(taken(look('3 of 10')).remarks).toEqual([]);
  });

  test.each([
    ['never', ['20 of 20', '0 of 20']],
    ['3', ['20 of 20', '0 of 20']],
    ['3 of 0', ['20 of 20', '0 of 20']],
    ['12 of 3', ['3 of 12']],
    ['3 of 99999', ['20 of 20', '0 of 20']],
    ['', ['20 of 20', '0 of 20']],
  ])('refuses "%s" and shows the form', (typed, offers) => {
    const seen = look(typed);
    expect(seen.ok ? null : seen.refusal.offers).toEqual(offers);
  });

  test('says how many tries a healthy board passes', () => {
    expect(expectedText(reading, settingsOf({}))).toBe('always (20 of 20)');
  });
});
