import { describe, expect, test } from 'vitest';
import { beepText, expectedText, observationText, observe, parseBeeps } from '../../../engine/scale/index.ts';
import { readingOf, settingsOf, taken } from './quantity-reading.ts';

const rows = (...keys: readonly string[]) =>
  parseBeeps(keys.map((key, at) => ({ key, band: `band-${at}`, means: null })));

describe('parseBeeps()', () => {
  test('keeps each pattern in one form, and lists bands in order with the built-in one last', () => {
    const { measure, problems } = parseBeeps([
      { key: 'long short short', band: 'video', means: 'No video memory' },
      { key: '1-3-3', band: 'memory', means: null },
      { key: '2 long 1 short', band: 'video', means: null },
      { key: 'none', band: 'silent', means: null },
    ]);
    expect(problems).toEqual([]);
    expect(measure).toEqual({
      kind: 'beeps',
      patterns: [
        { pattern: 'LSS', band: 'video', means: 'No video memory' },
        { pattern: '1-3-3', band: 'memory', means: null },
        { pattern: 'LLS', band: 'video', means: null },
        { pattern: 'none', band: 'silent', means: null },
      ],
      bands: ['video', 'memory', 'silent', 'other'],
    });
  });

  test('tells a key that is no pattern, and one that stands there in other words', () => {
    expect(rows('a tune', 'long short', '1 long, 1 short', '1-3').problems).toEqual([
      { entry: 0, problem: { from: 0, to: 6, code: 'beep-shape', found: 'a tune' } },
      {
        entry: 2,
        problem: { from: 0, to: 15, code: 'beep-twice', found: '1 long, 1 short', other: 'long short' },
      },
    ]);
  });
});

describe('observe() of beeps', () => {
  const { measure } = parseBeeps([
    { key: '1 long 2 short', band: 'video', means: null },
    { key: '1-3-3', band: 'memory', means: null },
    { key: 'short', band: 'passed', means: null },
    { key: 'none', band: 'silent', means: null },
  ]);
  const reading = readingOf(measure, ['passed']);
  const look = (typed: string) => observe(reading, settingsOf({}), typed);

  test.each([
    ['long short short', 'LSS', 'video'],
    ['1 long 2 short', 'LSS', 'video'],
    ['1 long, 2 shorts', 'LSS', 'video'],
    ['one-three', null, null],
    ['L S S', 'LSS', 'video'],
    ['lss', 'LSS', 'video'],
    ['1L2S', 'LSS', 'video'],
    ['long-short-short', 'LSS', 'video'],
    ['long, then short and short', 'LSS', 'video'],
    ['LONG SHORT SHORT', 'LSS', 'video'],
    ['1-3-3', '1-3-3', 'memory'],
    ['1 - 3 - 3', '1-3-3', 'memory'],
    ['1–3–3', '1-3-3', 'memory'],
    ['1', 'S', 'passed'],
    ['1 beep', 'S', 'passed'],
    ['1 short beep', 'S', 'passed'],
    ['5 beeps', 'SSSSS', 'other'],
    ['1-3-4', '1-3-4', 'other'],
    ['l ss', null, null],
    ['none', 'none', 'silent'],
    ['Silent', 'none', 'silent'],
    ['silence', 'none', 'silent'],
    ['0 long', null, null],
    ['1-0-3', null, null],
    ['40 short', null, null],
    ['long short quack', null, null],
    ['', null, null],
  ])('hears "%s" as %s', (typed, pattern, band) => {
    const seen = look(typed);
    expect(seen.ok ? seen.value.understood : null).toEqual(pattern && { kind: 'beeps', pattern });
    expect(seen.ok ? seen.value.bands : null).toEqual(band && [band]);
  });

  test('offers the patterns of the table where it heard none', () => {
    const seen = look('it beeps');
    expect(seen.ok ? null : seen.refusal.offers).toEqual(['long short short', '1-3-3', 'short', 'silence']);
  });

  test('says patterns as people do, and what a healthy board plays', () => {
    expect(observationText(taken(look('1L2S')))).toBe('long short short');
    expect(['SSSSSSSS', 'LLSSSSSS', '2-2', 'none'].map(beepText)).toEqual([
      '8 short',
      '2 long 6 short',
      '2-2',
      'silence',
    ]);
    expect(expectedText(reading, settingsOf({}))).toBe('passed (short)');
  });
});
