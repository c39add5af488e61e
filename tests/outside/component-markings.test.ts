import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { fromStored, printQuantity, readTyped } from '../../engine/quantity/index.ts';
import { expectedText } from '../../engine/scale/index.ts';
import { expecting, settingsOf, taken, verdict } from '../engine/scale/quantity-reading.ts';

/** The exact value of a marking as it is typed. */
function typed(text: string, unit: string): Fraction {
  const { understood, remarks } = taken(readTyped(text, { unit, allowNone: false }));
  if (understood.kind !== 'quantity') throw new Error(`Expected a quantity for "${text}"`);
  expect(remarks).toEqual([]);
  return fromStored(understood.quantity);
}

// IEC 60063:2015, preferred series. found: https://genorma.com/en/project/show/iec:proj:21131
// E12 and E24. found: https://www.qsl.net/g4usp/Components/Component%20preferred%20values.htm
const e12 = [10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82];
const e24 = [...e12, 11, 13, 16, 20, 24, 30, 36, 43, 51, 62, 75, 91].sort((a, b) => a - b);
// E96. computed; the 83 values that the same page shows agree.
const e96 = [
  100, 102, 105, 107, 110, 113, 115, 118, 121, 124, 127, 130, 133, 137, 140, 143, 147, 150, 154, 158, 162,
  165, 169, 174, 178, 182, 187, 191, 196, 200, 205, 210, 215, 221, 226, 232, 237, 243, 249, 255, 261, 267,
  274, 280, 287, 294, 301, 309, 316, 324, 332, 340, 348, 357, 365, 374, 383, 392, 402, 412, 422, 432, 442,
  453, 464, 475, 487, 499, 511, 523, 536, 549, 562, 576, 590, 604, 619, 634, 649, 665, 681, 698, 715, 732,
  750, 768, 787, 806, 825, 845, 866, 887, 909, 931, 953, 976,
];

const byFormula = (steps: number, digits: number): readonly number[] =>
  Array.from({ length: steps }, (_, at) => Math.round(10 ** (at / steps + digits - 1)));

describe('preferred values', () => {
  test('the 96 values of E96 follow from the formula without exception', () => {
    expect(byFormula(96, 3)).toEqual(e96);
  });

  // The eight exceptions: computed.
  test('E24 follows from the formula with eight exceptions, and holds E12', () => {
    const odd = byFormula(24, 2).flatMap((value, at) => (value === e24[at] ? [] : [[value, e24[at]]]));
    expect(odd).toEqual([
      [26, 27],
      [29, 30],
      [32, 33],
      [35, 36],
      [38, 39],
      [42, 43],
      [46, 47],
      [83, 82],
    ]);
    expect(e24.filter((_, at) => at % 2 === 0)).toEqual(e12);
  });

  /** `4k99`, `499R`, `49R9`: the letter stands where the decimal point would. */
  function marking(value: number, power: number): string {
    const letters = ['R', 'k', 'M'];
    const digits = String(value).padEnd(3, '0');
    const point = (power % 3) + 1;
    const letter = letters[Math.floor(power / 3)] ?? 'G';
    return `${digits.slice(0, point)}${letter}${digits.slice(point).replace(/0+$/, '')}`;
  }

  test('every value of E12, E24 and E96, typed as marked, is read exactly from 1 Ω to 10 MΩ', () => {
    let count = 0;
    for (const value of [...e24, ...e96]) {
      for (let power = 0; power <= 6; power += 1) {
        const ohms = new Fraction(value, 10 ** (String(value).length - 1)).mul(10 ** power);
        for (const text of [marking(value, power), marking(value, power).toUpperCase()]) {
          expect(`${text} = ${typed(text, 'Ω').toFraction()}`).toBe(`${text} = ${ohms.toFraction()}`);
          count += 1;
        }
      }
    }
    expect(count).toBe((24 + 96) * 7 * 2);
  });

  // 4465 Ω to 4935 Ω: computed.
  test('a 4.7 kΩ resistor of 5 % is good from 4465 Ω to 4935 Ω', () => {
    const resistor = expecting('4.7 kΩ ± 5 %', 'Ω');
    expect(expectedText(resistor, settingsOf({}))).toBe('4465 Ω .. 4935 Ω');
    expect(['4464', '4k465', '4K7', '4.935k', '4936'].map((text) => verdict(resistor, text))).toEqual([
      'low',
      'good',
      'good',
      'good',
      'high',
    ]);
  });
});

describe('the letter-and-digit code of IEC 60062', () => {
  // found: https://en.wikipedia.org/wiki/IEC/EN_60062 (the same table on three mirrors)
  test.each([
    ['R47', '0.47 Ω', '47/100'],
    ['4R7', '4.7 Ω', '47/10'],
    ['470R', '470 Ω', '470'],
    ['4K7', '4.7 kΩ', '4700'],
    ['47K', '47 kΩ', '47000'],
    ['47K3', '47.3 kΩ', '47300'],
    ['470K', '470 kΩ', '470000'],
    ['4M7', '4.7 MΩ', '4700000'],
    // From memory (high).
    ['2M2', '2.2 MΩ', '2200000'],
    // Common trade form; "lowercase letters for capacitors, uppercase letters for resistors" by custom, found on the same page.
    ['4k7', '4.7 kΩ', '4700'],
  ])('reads %s as %s', (text, shown, value) => {
    expect(typed(text, 'Ω').toFraction()).toBe(value);
    const { understood } = taken(readTyped(text, { unit: 'Ω', allowNone: false }));
    expect(understood.kind === 'quantity' && printQuantity(understood.quantity)).toBe(shown);
  });

  // From memory (high).
  test.each([
    ['1n5', '3/2000000000'],
    ['p33', '33/100000000000000'],
    ['4\u00b57', '47/10000000'],
    ['4\u03bc7', '47/10000000'],
  ])('reads the capacitor %s', (text, value) => {
    expect(typed(text, 'F').toFraction()).toBe(value);
  });

  // A trade extension that is not in IEC 60062, from memory (high).
  test('is stretched by the trade to 3V3, which is 3.3 V', () => {
    expect(typed('3V3', 'V').toFraction()).toBe('33/10');
  });
});
