import { describe, expect, test } from 'vitest';
import { standardUncertainty } from '../../engine/doubt/decision/index.ts';
import { parseInstrument, plusMinusOf } from '../../engine/doubt/index.ts';
import { fromStored, printQuantity, readWritten, withPrefix } from '../../engine/quantity/index.ts';
import { taken } from '../engine/scale/quantity-reading.ts';

/** How far a value can be off, and the two ends of what is possible, through our own lines and arithmetic. */
function off(
  line: string,
  shown: string,
): { readonly a: string; readonly from: string; readonly to: string } {
  const value = taken(readWritten(shown, null));
  const found = plusMinusOf(taken(parseInstrument(`meter (meter): ${line}`)), value);
  if (found === null) throw new Error(`Expected "${line}" to hold ${shown}`);
  const print = (base: ReturnType<typeof fromStored>) => printQuantity(withPrefix(base, value.unit));
  const middle = fromStored(value);
  return { a: print(found.value), from: print(middle.sub(found.value)), to: print(middle.add(found.value)) };
}

describe('± (per cent of the reading + digits) of a hand-held meter', () => {
  // An instrument maker's application note. found: "= +/- 1.5 V"
  test('120 V on the 600.0 V range with ± (1 % + 3) is off by at most 1.5 V', () => {
    expect(off('600 V ± (1 % + 3) at 0.1 V', '120 V').a).toBe('1.5 V');
  });

  // found: http://sk.gvda-instrument.com/info/introduction-to-digital-multimeter-accuracy-87246271.html
  // Another page prints 99.8 V for the low end, which is an error.
  test('100.0 V with ± (1 % + 2) lies from 98.8 V to 101.2 V', () => {
    expect(off('600 V ± (1 % + 2) at 0.1 V', '100 V')).toEqual({ a: '1.2 V', from: '98.8 V', to: '101.2 V' });
  });

  // found: https://www.gvda-instrument.com/info/multimeter-error-69432302.html
  test('2.000 V with ± (0.5 % + 3) and 1 mV a digit lies from 1.987 V to 2.013 V', () => {
    expect(off('6 V ± (0.5 % + 3) at 1 mV', '2 V')).toEqual({ a: '13 mV', from: '1.987 V', to: '2.013 V' });
  });
});

describe('± (per cent of the reading + per cent of the range) of a bench meter', () => {
  // found: https://www.easymanua.ls/keysight/34401a/manual?p=28
  test('5 V on the 10 V range with ± (0.0020 % + 0.0005 % of range) is off by at most 150 µV, 30 ppm', () => {
    const { a } = off('10 V ± (0.0020 % + 0.0005 % of range)', '5 V');
    expect(a).toBe('150 µV');
    expect(
      fromStored(taken(readWritten(a, null)))
        .div(5)
        .toFraction(),
    ).toBe('3/100000');
  });
});

describe('a meter on a rail', () => {
  // Joined from the above and the limits of the rails; computed
  test('3.150 V with ± (0.5 % + 2) and 1 mV a digit is off by at most 17.75 mV, u = 10.25 mV, U = 20.5 mV', () => {
    expect(off('6 V ± (0.5 % + 2) at 1 mV', '3.150 V').a).toBe('17.75 mV');
    // JCGM 100:2008, 4.3.7: u = a / √3. from memory
    expect(standardUncertainty(17.75)).toBeCloseTo(10.25, 2);
    expect(2 * standardUncertainty(17.75)).toBeCloseTo(20.5, 1);
  });

  test('4.80 V with ± (0.5 % + 2) and 10 mV a digit is off by at most 44 mV', () => {
    expect(off('60 V ± (0.5 % + 2) at 10 mV', '4.80 V').a).toBe('44 mV');
    expect(2 * standardUncertainty(44)).toBeCloseTo(50.8, 1);
  });
});
