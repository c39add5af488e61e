import { describe, expect, test } from 'vitest';
import { checkScale, expectedText, parseExpect } from '../../../engine/scale/index.ts';
import { quantitySetting, readingOf, settingsOf, taken } from './quantity-reading.ts';

const settings = [quantitySetting('fsb', 'MHz', '40 MHz'), quantitySetting('vneg', 'V', '-12 V')];
const values = settingsOf({ fsb: '40 MHz', vneg: '-12 V' });

/** `low|good|high: 4.75 V .. 5.25 V`: the bands, low end first, and what is good. */
function scale(text: string, unit = 'V'): string {
  const value = taken(parseExpect(text, unit, settings));
  expect(checkScale(value, unit, settings)).toEqual([]);
  const reading = readingOf({ kind: 'quantity', unit, scale: value }, ['good']);
  return `${value.bands.join('|')}: ${expectedText(reading, values)}`;
}

const problem = (text: string, unit = 'V') => {
  const parsed = parseExpect(text, unit, settings);
  const problems = parsed.ok ? checkScale(parsed.value, unit, settings) : parsed.problems;
  expect(problems).toHaveLength(1);
  return problems[0];
};

describe('parseExpect()', () => {
  test.each([
    ['5 V ± 5 %', 'V', 'low|good|high: 4.75 V .. 5.25 V'],
    ['5 V +/- 5 %', 'V', 'low|good|high: 4.75 V .. 5.25 V'],
    ['5 V +- 5 %', 'V', 'low|good|high: 4.75 V .. 5.25 V'],
    ['3.3 V ± 5 %', 'V', 'low|good|high: 3.135 V .. 3.465 V'],
    ['3.3 V ± 0.3 V', 'V', 'low|good|high: 3 V .. 3.6 V'],
    ['3V3 ± 300 mV', 'V', 'low|good|high: 3 V .. 3.6 V'],
    ['48 MHz ± 2500 ppm', 'MHz', 'low|good|high: 47.88 MHz .. 48.12 MHz'],
    ['fsb ± 1 %', 'MHz', 'low|good|high: 39.6 MHz .. 40.4 MHz'],
    ['fsb ± 500 kHz', 'MHz', 'low|good|high: 39.5 MHz .. 40.5 MHz'],
    ['fsb * 2 ± 1 %', 'MHz', 'low|good|high: 79.2 MHz .. 80.8 MHz'],
    ['4 V .. 5.25 V', 'V', 'low|good|high: 4 V .. 5.25 V'],
    ['4 .. 5.25 V', 'V', 'low|good|high: 4 V .. 5.25 V'],
    ['5.25 V .. 4 V', 'V', 'low|good|high: 4 V .. 5.25 V'],
    ['4 V … 5.25 V', 'V', 'low|good|high: 4 V .. 5.25 V'],
    ['50 MHz .. fsb', 'MHz', 'low|good|high: 40 MHz .. 50 MHz'],
    ['-1 V .. 1 V', 'V', 'low|good|high: -1 V .. 1 V'],
    ['≥ 4 V', 'V', 'low|good: at least 4 V'],
    ['>= 4 V', 'V', 'low|good: at least 4 V'],
    ['at least 4 V', 'V', 'low|good: at least 4 V'],
    ['≤ 0.7 V', 'V', 'good|high: at most 0.7 V'],
    ['at most 0.7 V', 'V', 'good|high: at most 0.7 V'],
    ['At most fsb * 2', 'MHz', 'good|high: at most 80 MHz'],
    ['45 % .. 55 %', '%', 'low|good|high: 45 % .. 55 %'],
    ['40 °C ± 5 °C', '°C', 'low|good|high: 35 °C .. 45 °C'],
    ['40 °C ± 9 °F', '°C', 'low|good|high: 35 °C .. 45 °C'],
    ['10 ± 2', 'counts', 'low|good|high: 8 counts .. 12 counts'],
    ['1 ± 5 %', '', 'low|good|high: 0.95 .. 1.05'],
  ])('reads "%s" in %s as %s', (text, unit, read) => {
    expect(scale(text, unit)).toBe(read);
  });

  test.each([
    ['-12 V ± 10 %', 'high|good|low: -13.2 V .. -10.8 V'],
    ['-12 V ± 1.2 V', 'high|good|low: -13.2 V .. -10.8 V'],
    ['-10.8 V .. -13.2 V', 'high|good|low: -13.2 V .. -10.8 V'],
    ['vneg ± 10 %', 'high|good|low: -13.2 V .. -10.8 V'],
    ['-(5 V) ± 10 %', 'high|good|low: -5.5 V .. -4.5 V'],
  ])('lets low and high go by magnitude on the negative rail "%s"', (text, read) => {
    expect(scale(text)).toBe(read);
    expect(taken(parseExpect(text, 'V', settings)).byMagnitude).toBe(true);
  });

  test('keeps the nominal, so that a value can be told as a share of it', () => {
    expect(taken(parseExpect('fsb ± 1 %', 'MHz')).nominal).toEqual({ kind: 'name', name: 'fsb' });
    expect(taken(parseExpect('4 V .. 5 V', 'V')).nominal).toBe(null);
  });

  test('refuses a tolerance in per cent of a percentage and spells out what is meant', () => {
    expect(problem('50 % ± 5 %', '%')).toMatchObject({
      code: 'tolerance-of',
      what: 'percent',
      instead: '45 % .. 55 %',
    });
    expect(problem('0 ppm ± 50 ppm', 'ppm')).toMatchObject({
      code: 'tolerance-of',
      instead: '-50 ppm .. 50 ppm',
    });
    expect(scale('45 % .. 55 %', '%')).toBe('low|good|high: 45 % .. 55 %');
  });

  test('refuses a tolerance in per cent of zero', () => {
    expect(problem('0 V ± 5 %')).toEqual({
      code: 'tolerance-of',
      from: 6,
      to: 9,
      what: 'zero',
      instead: null,
    });
  });

  test('refuses a tolerance in per cent of a temperature and works out the range', () => {
    expect(problem('40 °C ± 5 %', '°C')).toMatchObject({
      code: 'tolerance-of',
      what: 'temperature',
      instead: '38 °C .. 42 °C',
    });
    expect(problem('100 °F ± 10 %', '°C')).toMatchObject({ instead: '90 °F .. 110 °F' });
  });

  test('refuses a nominal without a tolerance', () => {
    expect(problem('5 V')).toEqual({ code: 'no-tolerance', from: 0, to: 3, nominal: '5 V' });
    expect(problem('fsb', 'MHz')).toMatchObject({ code: 'no-tolerance', nominal: 'fsb' });
  });

  test.each([
    ['5 V ± 0 V', 'limits-order'],
    ['5 V ± -1 V', 'limits-order'],
    ['4 V .. 4 V', 'limits-order'],
    ['low < 5 V', 'expect-shape'],
    ['5 ± 5 %', 'not-a-quantity'],
    ['5 V ± 5', 'not-a-quantity'],
    ['5 V ± 5 Hz', 'unlike-units'],
    ['5 V ±', 'formula-syntax'],
    ['± 5 %', 'formula-syntax'],
    ['4 V ..', 'formula-syntax'],
    ['at least', 'formula-syntax'],
    ['', 'formula-syntax'],
    ['3,3 V ± 5 %', 'decimal-comma'],
    ['5 v ± 5 %', 'unknown-unit'],
    ['5 MHz ± 5 %', 'wrong-unit'],
    ['5 Vpp ± 5 %', 'wrong-unit'],
    ['fbs ± 1 V', 'unknown-name'],
    ['fsb ± 1 MHz + 1 V', 'unlike-units'],
  ])('refuses "%s" as %s', (text, code) => {
    expect(problem(text)?.code).toBe(code);
  });

  test('refuses an absurdly long text', () => {
    expect(problem(`5 V ± ${'5'.repeat(100_000)} %`)?.code).toBe('expect-shape');
  });
});
