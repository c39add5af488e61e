import { describe, expect, test } from 'vitest';
import {
  bandsOf,
  expectedBecause,
  expectedText,
  fractionOfNominal,
  normalBandsOf,
  observe,
  parseCodes,
  resolveScale,
  settingsOf as settingsUsed,
} from '../../../engine/scale/index.ts';
import { expecting, quantitySetting, readingOf, scaled, settingsOf, taken } from './quantity-reading.ts';

const at40 = settingsOf({ fsb: '40 MHz' });

describe('expectedText()', () => {
  test.each([
    [expecting('fsb ± 1 %', 'MHz'), '39.6 MHz .. 40.4 MHz'],
    [expecting('14.318181 MHz ± 50 ppm', 'MHz'), '14.3175 MHz .. 14.3189 MHz'],
    [expecting('≥ 4 V', 'V'), 'at least 4 V'],
    [expecting('≤ 400 mV', 'V'), 'at most 0.4 V'],
    [expecting('-12 V ± 10 %', 'V'), '-13.2 V .. -10.8 V'],
    [scaled('a < 1 V < b < 2 V < c < 3 V < d', 'V', 'b', 'c'), '1 V .. 3 V'],
    [scaled('a < 1 V < b < 2 V < c < 3 V < d', 'V', 'a', 'c'), 'at most 1 V or 2 V .. 3 V'],
    [scaled('a < 1 V < b', 'V', 'a', 'b'), 'any value'],
    [expecting('vcc ± 5 %', 'V'), 'depends on vcc'],
  ])('says what a quantity should be (%#)', (reading, text) => {
    expect(expectedText(reading, at40)).toBe(text);
  });

  test('names options and codes', () => {
    const options = [
      { name: 'steady', means: null },
      { name: 'noisy', means: null },
      { name: 'none', means: null },
    ];
    expect(expectedText(readingOf({ kind: 'options', options }, ['steady', 'noisy']), at40)).toBe(
      'steady or noisy',
    );
    const { measure } = parseCodes([
      { key: 'FF', band: 'done', means: null },
      { key: '00', band: 'done', means: null },
      { key: '40..4F', band: 'boot', means: null },
    ]);
    expect(expectedText(readingOf(measure, ['done', 'boot']), at40)).toBe('done (FF, 00) or boot (40..4F)');
  });

  test('is empty where nothing is judged', () => {
    expect(expectedText({ ...expecting('5 V ± 5 %', 'V'), normal: 'any' }, at40)).toBe('');
  });

  test('says so where the limits contradict each other', () => {
    expect(expectedText(scaled('a < fsb < b < 1 MHz < c', 'MHz', 'b'), at40)).toContain('wrong order');
  });
});

describe('expectedBecause()', () => {
  test('lists the settings in the limits, what they are and what they are now', () => {
    const declared = new Map([
      ['fsb', quantitySetting('fsb', 'MHz', null)],
      ['vcc', quantitySetting('vcc', 'V', null)],
    ]);
    const reading = scaled('low < vcc * fsb / 1 MHz < good < vcc * 99 < high', 'V', 'good');
    expect(expectedBecause(reading, at40, declared)).toEqual([
      { setting: 'vcc', is: 'What vcc is', value: null },
      { setting: 'fsb', is: 'What fsb is', value: '40 MHz' },
    ]);
    expect(settingsUsed(reading)).toEqual(['vcc', 'fsb']);
    expect(expectedBecause(expecting('5 V ± 5 %', 'V'), at40, declared)).toEqual([]);
  });
});

describe('fractionOfNominal()', () => {
  const share = (reading: ReturnType<typeof expecting>, typed: string) =>
    fractionOfNominal(taken(observe(reading, at40, typed)), resolveScale(reading, at40));

  test('is the share of what the value should be', () => {
    expect(share(expecting('fsb ± 1 %', 'MHz'), '25,2M')).toBe(0.63);
    expect(share(expecting('-12 V ± 10 %', 'V'), '-6')).toBe(0.5);
  });

  test('takes the middle of a narrow normal band for what a reading should be', () => {
    expect(share(expecting('4.75 V .. 5.25 V', 'V'), '2.5')).toBe(0.5);
  });

  test('is null where there is no such share', () => {
    expect(share(expecting('4 V .. 5 V', 'V'), '4.5')).toBe(null);
    expect(share(expecting('vcc ± 5 %', 'V'), '4.5')).toBe(null);
    expect(share(expecting('0 V ± 0.1 V', 'V'), '4.5')).toBe(null);
    expect(share(expecting('40 °C ± 5 °C', '°C'), '45')).toBe(null);
    expect(share(expecting('fsb ± 1 %', 'MHz'), '20..30')).toBe(null);
  });
});

describe('bandsOf() and normalBandsOf()', () => {
  test('list the bands of any measure, and the normal ones', () => {
    const quantity = expecting('-12 V ± 10 %', 'V');
    expect([bandsOf(quantity), normalBandsOf(quantity)]).toEqual([['high', 'good', 'low'], ['good']]);
    const codes = readingOf(parseCodes([{ key: '00', band: 'stuck', means: null }]).measure, 'any');
    expect([bandsOf(codes), normalBandsOf(codes)]).toEqual([['stuck', 'other'], []]);
    const options = readingOf({ kind: 'options', options: [{ name: 'cold', means: null }] }, ['cold']);
    expect([bandsOf(options), normalBandsOf(options)]).toEqual([['cold'], ['cold']]);
  });
});
