import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import {
  compareQuantities,
  printNumber,
  printQuantity,
  quantityParts,
  toStored,
} from '../../../engine/quantity/index.ts';

describe('printQuantity()', () => {
  test.each([
    ['25200000', 'MHz', '25.2 MHz'],
    ['4700', 'kΩ', '4.7 kΩ'],
    ['-12', 'V', '-12 V'],
    ['627/200', 'V', '3.135 V'],
    ['17/20', 'mVpp', '850 mVpp'],
    ['5', 'V dc', '5 V dc'],
    ['1/2', '%', '50 %'],
    ['1/20000', 'ppm', '50 ppm'],
    ['85', '°F', '185 °F'],
    ['7', 'counts', '7 counts'],
    ['3/2', '', '1.5'],
    ['0', 'MHz', '0 MHz'],
    ['157500000/11', 'MHz', '14.3182 MHz'],
    ['14318180', 'MHz', '14.31818 MHz'],
    ['1/3', 'V', '0.333333 V'],
    ['2/3', 'V', '0.666667 V'],
  ])('prints %s in %s as "%s"', (value, unit, text) => {
    expect(printQuantity({ value, unit })).toBe(text);
  });

  test('prints in the unit it was written in', () => {
    expect(printQuantity({ value: '25200000', unit: 'Hz' })).toBe('25200000 Hz');
    expect(printQuantity({ value: '25200000', unit: 'kHz' })).toBe('25200 kHz');
  });

  test('parts the number from the unit for screens', () => {
    expect(quantityParts({ value: '-27/2', unit: 'V' })).toEqual({ number: '-13.5', unit: 'V' });
  });
});

describe('printNumber()', () => {
  test.each([
    ['999999.5', '999999.5'],
    ['3.13499999999', '3.135'],
    ['999999.99999', '1000000'],
    ['123456789', '123457000'],
    ['0.00001', '0.00001'],
    ['0.000000123', '1.23e-7'],
    ['1000000000000', '1e12'],
    ['-0.5', '-0.5'],
    ['100000', '100000'],
    ['99.99999949', '100'],
  ])('prints %s as %s', (value, text) => {
    expect(printNumber(new Fraction(value))).toBe(text);
  });

  test('gives six digits of a value without a short decimal form, whatever its size', () => {
    for (let power = -12; power <= 15; power += 1) {
      const value = new Fraction(10).pow(power) ?? new Fraction(0);
      const digits = printNumber(value.mul(2, 3))
        .replace(/e.*$/, '')
        .replace('.', '')
        .replace(/^0+/, '')
        .replace(/0+$/, '');
      expect(digits).toBe('666667');
    }
  });
});

describe('compareQuantities()', () => {
  test('orders quantities by value, whatever their unit', () => {
    const volts = [
      toStored(new Fraction(5), 'V'),
      toStored(new Fraction(17, 20), 'mV'),
      toStored(new Fraction(-12), 'V'),
    ];
    expect([...volts].sort(compareQuantities).map(printQuantity)).toEqual(['-12 V', '850 mV', '5 V']);
    expect(compareQuantities({ value: '1/2', unit: '%' }, { value: '1/2', unit: 'ppm' })).toBe(0);
  });
});
