import { describe, expect, test } from 'vitest';
import { judge, observe, parseCodes, resolveScale, usedLimits } from '../../../engine/scale/index.ts';
import { expecting, readingOf, scaled, settingsOf, taken, verdict } from './quantity-reading.ts';

const refusal = (reading: Parameters<typeof observe>[0], typed: string) => {
  const seen = observe(reading, settingsOf({}), typed);
  return seen.ok ? null : seen.refusal;
};

describe('observe() of a quantity', () => {
  const v5 = scaled('none < 0.5 V < low < 4.75 V < good < 5.25 V < high', 'V', 'good');

  test.each([
    ['0', 'none'],
    ['0.4999', 'none'],
    ['0.5', 'low'],
    ['4.7499', 'low'],
    ['4.75', 'good'],
    ['5.25', 'good'],
    ['5.2500001', 'high'],
    ['-3', 'none'],
    ['4,9', 'good'],
    ['none', 'none'],
    ['4.7 .. 4.8', 'low|good'],
    ['0 .. 9', 'none|low|good|high'],
    ['> 4.75', 'good|high'],
    ['> 5.25', 'high'],
    ['>= 5.25', 'good|high'],
    ['< 4.75', 'none|low'],
    ['<= 4.75', 'none|low|good'],
    ['< 0.5', 'none'],
    ['<= 0.5', 'none|low'],
    ['OL', 'none|low|good|high'],
  ])('judges %s V to be %s', (typed, bands) => {
    expect(verdict(v5, typed)).toBe(bands);
  });

  test('keeps what was typed, how it was understood and the limits it was judged by', () => {
    expect(taken(observe(v5, settingsOf({}), '4,9 V wanders'))).toEqual({
      reading: 'r',
      typed: '4,9 V wanders',
      understood: { kind: 'quantity', quantity: { value: '49/10', unit: 'V' } },
      mark: 'wanders',
      bands: ['good'],
      doubt: null,
      used: {
        bands: ['none', 'low', 'good', 'high'],
        limits: [
          { value: '1/2', unit: 'V' },
          { value: '19/4', unit: 'V' },
          { value: '21/4', unit: 'V' },
        ],
        twin: null,
      },
      remarks: [],
    });
  });

  test('passes on what was assumed, and what was refused', () => {
    expect(taken(observe(v5, settingsOf({}), '5 v')).remarks).toEqual(['read as V']);
    expect(refusal(v5, '5 Hz')).toEqual({
      text: '"Hz" is another kind of unit: this is read in V',
      offers: ['5 V'],
    });
  });

  test('takes a limit for the normal band beside it, and for the upper one where both or neither are normal', () => {
    expect(verdict(scaled('a < 1 V < b', 'V', 'a'), '1')).toBe('a');
    expect(verdict(scaled('a < 1 V < b', 'V', 'b'), '1')).toBe('b');
    expect(verdict(scaled('a < 1 V < b', 'V', 'a', 'b'), '1')).toBe('b');
    expect(verdict(scaled('a < 1 V < b < 2 V < c', 'V', 'c'), '1')).toBe('b');
    const any = { ...scaled('a < 1 V < b', 'V'), normal: 'any' } as const;
    expect(verdict(any, '1')).toBe('b');
  });

  test('judges a negative rail by magnitude where the author wrote what to expect', () => {
    const rail = expecting('-12 V ± 10 %', 'V');
    expect(['-10', '-10.8', '-12', '-13.2', '-14', '0', '12'].map((typed) => verdict(rail, typed))).toEqual([
      'low',
      'good',
      'good',
      'good',
      'high',
      'low',
      'low',
    ]);
    const written = scaled('below < -13.2 V < good < -10.8 V < above', 'V', 'good');
    expect(['-14', '-13.2', '-10'].map((typed) => verdict(written, typed))).toEqual([
      'below',
      'good',
      'above',
    ]);
  });

  test('takes an overload of an ohmmeter for the top band', () => {
    expect(verdict(scaled('short < 10 Ω < loaded < 1 kΩ < open', 'kΩ', 'loaded'), 'OL')).toBe('open');
    expect(verdict(scaled('slow < 1 MHz < fast', 'MHz', 'fast'), 'OL')).toBe('slow|fast');
  });

  test('takes none for zero only where there is such a band', () => {
    expect(refusal(expecting('5 V ± 5 %', 'V'), 'none')?.offers).toEqual(['0 V']);
    const rail = scaled('over < -13 V < good < -10 V < weak < -1 V < none', 'V', 'good');
    expect(verdict(rail, 'none')).toBe('none');
  });

  test('judges by the settings of the moment', () => {
    const clock = expecting('fsb ± 1 %', 'MHz');
    expect(verdict(clock, '39.6', settingsOf({ fsb: '40 MHz' }))).toBe('good');
    expect(verdict(clock, '39.6', settingsOf({ fsb: '66 MHz' }))).toBe('low');
  });

  test('leaves the bands on both sides of an unknown limit open', () => {
    const clock = scaled(
      'none < 1 kHz < slow < fsb * 99 % < good < fsb * 101 % < fast < 500 MHz < absurd',
      'MHz',
      'good',
    );
    for (const settings of [
      settingsOf({}),
      settingsOf({ fsb: null }),
      { settings: new Map([['fsb', 'an option']]), twins: new Map() },
    ]) {
      expect(verdict(clock, '40 MHz', settings)).toBe('slow|good|fast');
      expect(verdict(clock, '500 Hz', settings)).toBe('none');
      expect(verdict(clock, '500 MHz', settings)).toBe('absurd');
    }
    expect(verdict(clock, 'none')).toBe('none');
    const first = scaled('none < vcc * 10 % < low < 4 V < good', 'V', 'good');
    expect(verdict(first, '0')).toBe('none|low');
    expect(verdict(first, 'none')).toBe('none');
    expect(taken(observe(first, settingsOf({}), '0')).used).toBe(null);
    expect(resolveScale(first, settingsOf({}))).toMatchObject({
      missing: ['vcc'],
      limits: [null, { value: '4' }],
    });
  });

  test('tells the technician where limits contradict each other, and judges nothing', () => {
    const odd = scaled('low < fsb < good < 50 MHz < high', 'MHz', 'good');
    const seen = taken(observe(odd, settingsOf({ fsb: '66 MHz' }), '55'));
    expect(seen.bands).toEqual(['low', 'good', 'high']);
    expect(seen.used).toBe(null);
    expect(seen.remarks).toEqual([
      'The limits come out in the wrong order at these settings: 66 MHz, then 50 MHz',
    ]);
    const zero = scaled('low < 1 V * 1 MHz / fsb < good', 'V', 'good');
    expect(resolveScale(zero, settingsOf({ fsb: '0 MHz' })).contradiction).toContain('divides by zero');
    expect(usedLimits(resolveScale(odd, settingsOf({ fsb: '50 MHz' })))).toBe(null);
  });

  test('judges again what was understood before, at other settings', () => {
    const clock = expecting('fsb ± 1 %', 'MHz');
    const { understood } = taken(observe(clock, settingsOf({ fsb: '40 MHz' }), '48..52'));
    expect(judge(clock, resolveScale(clock, settingsOf({ fsb: '50 MHz' })), understood)).toEqual([
      'low',
      'good',
      'high',
    ]);
    expect(judge(clock, resolveScale(clock, settingsOf({ fsb: '33 MHz' })), understood)).toEqual(['high']);
  });
});

describe('observe() of options', () => {
  const names = ['steady', 'noisy', 'nothing at all', 'no clock', 'dual-rail', '7'];
  const reading = readingOf({ kind: 'options', options: names.map((name) => ({ name, means: null })) }, [
    'steady',
  ]);

  test.each([
    ['steady', 'steady'],
    ['STEADY', 'steady'],
    [' steady ', 'steady'],
    ['st', 'steady'],
    ['noi', 'noisy'],
    ['2', 'noisy'],
    ['7', '7'],
    ['6', '7'],
    ['dual rail', 'dual-rail'],
    ['nothing-at-all', 'nothing at all'],
    ['noisy wanders', 'noisy'],
  ])('understands "%s" as %s', (typed, option) => {
    expect(verdict(reading, typed)).toBe(option);
  });

  test('takes an option that is also a mark word for the option', () => {
    const seen = taken(observe(reading, settingsOf({}), 'steady'));
    expect(seen).toMatchObject({ understood: { kind: 'option', option: 'steady' }, mark: null, used: null });
    expect(taken(observe(reading, settingsOf({}), 'noisy wanders')).mark).toBe('wanders');
  });

  test('refuses what is not in the list, lists it, and puts the nearest first', () => {
    expect(refusal(reading, 'no')).toEqual({
      text: '"no" can be noisy or nothing at all or no clock',
      offers: ['noisy', 'nothing at all', 'no clock'],
    });
    expect(refusal(reading, 'nosy')?.offers[0]).toBe('noisy');
    expect([...(refusal(reading, '0')?.offers ?? [])].sort()).toEqual([...names].sort());
    expect(refusal(reading, '99')?.offers).toEqual(names);
    expect(refusal(reading, '')).toEqual({ text: 'Nothing was typed', offers: names });
    expect(refusal(reading, 'x'.repeat(100_000))?.offers).toEqual(names);
  });

  test('tells apart options that differ in letter case only', () => {
    const cases = readingOf(
      { kind: 'options', options: ['Ab', 'aB'].map((name) => ({ name, means: null })) },
      ['Ab'],
    );
    expect(verdict(cases, 'aB')).toBe('aB');
    expect(refusal(cases, 'ab')?.offers).toEqual(['Ab', 'aB']);
  });
});

describe('observe() of codes', () => {
  const { measure } = parseCodes([
    { key: 'none', band: 'dark', means: null },
    { key: '00', band: 'stuck', means: null },
    { key: '01..1f', band: 'early', means: 'Before memory' },
    { key: 'FF', band: 'done', means: null },
  ]);
  const reading = readingOf(measure, ['done']);

  test.each([
    ['0D', 'early'],
    ['0d', 'early'],
    ['d', 'early'],
    ['000D', 'early'],
    ['0x0d', 'early'],
    ['$0D', 'early'],
    ['0Dh', 'early'],
    ['01', 'early'],
    ['1F', 'early'],
    ['20', 'other'],
    ['0', 'stuck'],
    ['ff', 'done'],
    ['none', 'dark'],
    ['0D wanders', 'early'],
  ])('judges the code "%s" to be %s', (typed, band) => {
    expect(verdict(reading, typed)).toBe(band);
  });

  test('stores a code in upper case with all its digits', () => {
    expect(taken(observe(reading, settingsOf({}), 'dh')).understood).toEqual({ kind: 'code', code: '0D' });
  });

  test.each([
    ['1FF', ['1F', 'FF']],
    ['O0', ['00']],
    ['l1', ['11']],
    ['zz', ['none', '00', '01']],
    ['blank', ['none', '00', '01']],
    ['', ['none', '00', '01']],
    ['0x', ['none', '00', '01']],
    ['h', ['none', '00', '01']],
  ])('refuses "%s" and offers codes', (typed, offers) => {
    expect(refusal(reading, typed)?.offers).toEqual(offers);
  });
});
