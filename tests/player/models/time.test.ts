import { describe, expect, test } from 'vitest';
import { localIso } from '../../../engine/job/local-iso.ts';
import type { Entry } from '../../../engine/model/entry.ts';
import { benchMinutes, clockText } from '../../../player/models/bench-minutes.ts';
import { countdownText, minutesLeft } from '../../../player/models/minutes-left.ts';

const at = (...times: string[]): Entry[] =>
  times.map((time) => ({ kind: 'note', text: 'x', at: `2031-04-05T${time}:00+02:00` }));

describe('benchMinutes()', () => {
  test('adds up the time between entries', () => {
    expect(benchMinutes(at('10:00', '10:07', '10:20'), null)).toBe(20);
  });

  test('leaves long silences out', () => {
    expect(benchMinutes(at('10:00', '10:05', '14:00', '14:02'), null)).toBe(7);
  });

  test('counts on from the last entry', () => {
    expect(benchMinutes(at('10:00'), '2031-04-05T10:04:30+02:00')).toBe(4);
  });

  test('is nothing for an empty job', () => {
    expect(benchMinutes([], null)).toBe(0);
  });
});

test('clockText() writes hours and minutes', () => {
  expect(clockText(7)).toBe('0:07');
  expect(clockText(102)).toBe('1:42');
});

describe('minutesLeft()', () => {
  test('counts from the moment the waiting began, whatever the offset of the clock', () => {
    expect(minutesLeft('2031-04-05T10:00:00+02:00', 30, '2031-04-05T08:10:30+00:00')).toBeCloseTo(19.5, 9);
  });

  test('stops at nothing', () => {
    expect(minutesLeft('2031-04-05T10:00:00+02:00', 30, '2031-04-06T10:00:00+02:00')).toBe(0);
  });
});

test('countdownText() writes minutes and seconds', () => {
  expect(countdownText(19.5)).toBe('19:30');
  expect(countdownText(0)).toBe('0:00');
});

describe('localIso()', () => {
  test('begins with the day at the bench', () => {
    expect(localIso(new Date('2031-04-05T22:30:00Z'), 120)).toBe('2031-04-06T00:30:00+02:00');
    expect(localIso(new Date('2031-04-05T02:30:00Z'), -210)).toBe('2031-04-04T23:00:00-03:30');
  });
});
