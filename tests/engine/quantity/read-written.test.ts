import { describe, expect, test } from 'vitest';
import { readWritten } from '../../../engine/quantity/index.ts';

const problem = (text: string, unit: string | null = null) => {
  const read = readWritten(text, unit);
  return read.ok ? read.value : read.problems[0];
};

describe('readWritten()', () => {
  test.each([
    ['5 V', null, '5', 'V'],
    ['3.135V', null, '627/200', 'V'],
    ['-12 V', null, '-12', 'V'],
    ['48 MHz', null, '48000000', 'MHz'],
    ['60 %', null, '3/5', '%'],
    ['3V3', null, '33/10', 'V'],
    ['4k7Ω', null, '4700', 'kΩ'],
    ['5 V p-p', null, '5', 'Vpp'],
    ['66', 'MHz', '66000000', 'MHz'],
    ['66 k', 'MHz', '66000', 'kHz'],
    ['5 V dc', 'V', '5', 'V dc'],
    ['850 mV', 'Vpp', '17/20', 'mVpp'],
    ['5', '', '5', ''],
  ])('reads "%s" with the default unit %s', (text, unit, value, written) => {
    expect(problem(text, unit)).toEqual({ value, unit: written });
  });

  test('wants the decimal point and gives the text to put in', () => {
    expect(problem('3,3 V')).toEqual({
      code: 'decimal-comma',
      from: 0,
      to: 5,
      text: '3,3 V',
      instead: '3.3 V',
    });
    expect(problem('25,2M', 'MHz')).toMatchObject({ code: 'decimal-comma', instead: '25.2 MHz' });
  });

  test('wants a unit unless there is a default', () => {
    expect(problem('5')).toMatchObject({ code: 'not-a-quantity', text: '5' });
    expect(problem('200k')).toEqual({ code: 'unknown-unit', from: 3, to: 4, unit: 'k', near: null });
  });

  test('wants the unit in its right letter case and offers it', () => {
    expect(problem('25.2 mhz')).toEqual({ code: 'unknown-unit', from: 5, to: 8, unit: 'mhz', near: 'MHz' });
    expect(problem('12 v', 'V')).toMatchObject({ code: 'unknown-unit', near: 'V' });
    expect(problem('5 mohm', 'Ω')).toMatchObject({ code: 'unknown-unit', near: 'milliohm' });
  });

  test('tells a quantity of another kind from a word that is no unit', () => {
    expect(problem('5 V', 'MHz')).toEqual({ code: 'wrong-unit', from: 2, to: 3, unit: 'V', expected: 'MHz' });
    expect(problem('5 Vrms', 'Vpp')).toMatchObject({ code: 'wrong-unit', unit: 'Vrms', expected: 'Vpp' });
    expect(problem('5 fsb', 'MHz')).toMatchObject({ code: 'unknown-unit', unit: 'fsb' });
  });

  test('offers the number that was probably meant', () => {
    expect(problem('1.2.3 V')).toMatchObject({ code: 'not-a-quantity', near: '1.23 V' });
    expect(problem('1,234.5 V')).toMatchObject({ code: 'not-a-quantity', near: '1234.5 V' });
    expect(problem('V')).toMatchObject({ code: 'not-a-quantity', near: null });
    expect(problem('9'.repeat(1_000_000))).toMatchObject({ code: 'not-a-quantity', near: null });
  });
});
