import fc from 'fast-check';
import Fraction from 'fraction.js';
import Qty from 'js-quantities';
import { unit as mathUnit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { fromBase, fromStored, readTyped, storedUnit } from '../../engine/quantity/index.ts';
import { taken } from '../engine/scale/quantity-reading.ts';

/** What `text` is in `unit`, by our own reader and our own conversion. */
function ours(text: string, unit: string): Fraction {
  const { understood } = taken(readTyped(text, { unit, allowNone: false }));
  if (understood.kind !== 'quantity') throw new Error(`Expected a quantity for "${text}"`);
  return fromBase(storedUnit(unit), fromStored(understood.quantity));
}

/** Our unit, and what mathjs 15.2.0 and js-quantities 1.8.0 call it; both are general-purpose libraries under free licences. */
const families: readonly (readonly (readonly [ours: string, math: string, qty: string])[])[] = [
  ['µV', 'mV', 'V', 'kV'],
  ['nA', 'µA', 'mA', 'A'],
  ['Hz', 'kHz', 'MHz', 'GHz'],
  ['ps', 'ns', 'µs', 'ms', 's'],
  ['pF', 'nF', 'µF', 'mF', 'F'],
  ['nH', 'µH', 'mH', 'H'],
  ['µW', 'mW', 'W', 'kW'],
].map((units) => units.map((unit) => [unit, unit.replace('µ', 'u'), unit.replace('µ', 'u')] as const));

const ohms = ['m', '', 'k', 'M', 'G'].map(
  (prefix) => [`${prefix}Ω`, `${prefix}ohm`, `${prefix}Ohm`] as const,
);

const pair = fc
  .constantFrom(...families, ohms)
  .chain((units) => fc.tuple(fc.constantFrom(...units), fc.constantFrom(...units)));

/** Relative distance, as the two libraries compute in doubles. */
const near = (exact: Fraction, other: number): boolean => {
  const value = exact.valueOf();
  return value === other || Math.abs(value - other) <= 1e-12 * Math.abs(value);
};

const number = fc
  .tuple(fc.integer({ min: -9_999_999, max: 9_999_999 }), fc.integer({ min: -6, max: 6 }))
  .map(([digits, power]) => `${digits}e${power}`);

describe('conversions, compared with two general unit libraries', () => {
  test('agree with mathjs on random values of every kind of unit, to 1e-12', () => {
    fc.assert(
      fc.property(number, pair, (text, [from, to]) => {
        expect(near(ours(`${text} ${from[0]}`, to[0]), mathUnit(Number(text), from[1]).toNumber(to[1]))).toBe(
          true,
        );
      }),
      { numRuns: 1000 },
    );
  });

  test('agree with js-quantities on random values of every kind of unit, to 1e-12', () => {
    fc.assert(
      fc.property(number, pair, (text, [from, to]) => {
        expect(near(ours(`${text} ${from[0]}`, to[0]), Qty(Number(text), from[2]).to(to[2]).scalar)).toBe(
          true,
        );
      }),
      { numRuns: 1000 },
    );
  });

  test('agree with both on temperatures', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1000, max: 5000 }), (tenths) => {
        const value = tenths / 10;
        const celsius = ours(`${value} °F`, '°C').valueOf();
        expect(celsius).toBeCloseTo(mathUnit(value, 'degF').toNumber('degC'), 9);
        expect(celsius).toBeCloseTo(Qty(value, 'tempF').to('tempC').scalar, 9);
        expect(ours(`${value} °C`, '°F').valueOf()).toBeCloseTo(mathUnit(value, 'degC').toNumber('degF'), 9);
      }),
    );
  });

  // The table was tried with both libraries when this list was made; the expected values are exact (computed).
  test.each([
    ['12.6 MHz', 'Hz', '12600000'],
    ['700 mV', 'V', '7/10'],
    ['4.7 kΩ', 'Ω', '4700'],
    ['1 µF', 'F', '1/1000000'],
    ['-12 V', 'mV', '-12000'],
    ['14.318181 MHz', 'kHz', '14318181/1000'],
    ['30 ns', 's', '3/100000000'],
    ['500 ms', 's', '1/2'],
    ['22 pF', 'nF', '11/500'],
    ['2.2 MΩ', 'kΩ', '2200'],
    ['470 mΩ', 'Ω', '47/100'],
    ['250 mA', 'A', '1/4'],
    ['32.768 kHz', 'Hz', '32768'],
    ['50 ppm', '%', '1/200'],
    ['185 °F', '°C', '85'],
  ])('%s is exactly so many %s: %s', (text, unit, value) => {
    expect(ours(text, unit).toFraction()).toBe(value);
  });

  test('are exact where doubles are not', () => {
    expect(mathUnit(22, 'pF').toNumber('nF')).not.toBe(0.022);
    expect(ours('22 pF', 'nF').equals(new Fraction(22, 1000))).toBe(true);
  });
});

describe('texts that general unit libraries misread without a word', () => {
  const refused = (text: string, unit: string): boolean => !readTyped(text, { unit, allowNone: false }).ok;

  // js-quantities 1.8.0 takes 1u for an atomic mass unit (tried).
  test('1u is a millionth of what the reading is in', () => {
    expect(Qty.parse('1u')?.to('kg').scalar).toBeLessThan(1e-26);
    expect(ours('1u', 'F').toFraction()).toBe('1/1000000');
    expect(ours('1u', 'V').toFraction()).toBe('1/1000000');
    expect(ours('1u', 'µs').toFraction()).toBe('1');
    expect(refused('1u', 'MHz')).toBe(true);
  });

  // js-quantities 1.8.0 takes 3V3 for three cubic volts (tried).
  test('3V3 is 3.3 V', () => {
    expect(Qty.parse('3V3')?.to('V3').scalar).toBe(3);
    expect(ours('3V3', 'V').toFraction()).toBe('33/10');
    expect(refused('3V3', 'Ω')).toBe(true);
  });

  // js-quantities 1.8.0 takes 100 R for a hundred roentgen (tried).
  test('100 R is 100 Ω', () => {
    expect(Qty.parse('100 R')?.to('roentgen').scalar).toBe(100);
    expect(ours('100 R', 'Ω').toFraction()).toBe('100');
    expect(refused('100 R', 'V')).toBe(true);
  });

  // Both libraries refuse these (tried); at a bench they are daily bread.
  test.each([
    ['12.6 mhz', 'MHz', '63/5'],
    ['12 v', 'V', '12'],
    ['700 mVpp', 'Vpp', '7/10'],
    ['4k7', 'Ω', '4700'],
    ['4.7k', 'Ω', '4700'],
    ['33,33 MHz', 'MHz', '3333/100'],
    ['1 \u00b5F', 'µF', '1'],
    ['1 \u03bcF', 'µF', '1'],
    ['100 \u03a9', 'Ω', '100'],
    ['100 \u2126', 'Ω', '100'],
  ])('%s is understood for a reading in %s', (text, unit, value) => {
    expect(ours(text, unit).toFraction()).toBe(value);
  });
});
