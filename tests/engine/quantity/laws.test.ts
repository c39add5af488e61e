import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import {
  compareQuantities,
  fromStored,
  parseUnit,
  printQuantity,
  readTyped,
  readWritten,
  storedUnit,
  toBase,
  toStored,
} from '../../../engine/quantity/index.ts';

const unit = fc.constantFrom(
  'V',
  'mV',
  'V dc',
  'Vpp',
  'mVrms',
  'A',
  'mA',
  'Ω',
  'kΩ',
  'mΩ',
  'MΩ',
  'Hz',
  'kHz',
  'MHz',
  's',
  'ms',
  'ns',
  'F',
  'µF',
  'nF',
  'µH',
  'W',
  '°C',
  '°F',
  '%',
  'ppm',
  'counts',
  '',
);

/** A decimal number of few digits, as text. */
const short = fc
  .tuple(fc.boolean(), fc.nat({ max: 99_999_999 }), fc.nat({ max: 8 }))
  .map(([minus, digits, places]) => {
    const text = String(digits).padStart(places + 1, '0');
    const whole = text.slice(0, text.length - places);
    return `${minus ? '-' : ''}${whole}${places === 0 ? '' : `.${text.slice(-places)}`}`;
  });

const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 80 }),
  fc.string({ unit: 'grapheme', maxLength: 30 }),
  // Nearly what people type.
  fc
    .array(
      fc.constantFrom(
        ...'0123456789.,-+eE±<>=…°%µμΩ ',
        '..',
        'k',
        'M',
        'm',
        'V',
        'pp',
        'Hz',
        'ohm',
        'R',
        'OL',
        'none',
        ' wanders',
        ' dc',
        '\u00a0',
        '−',
      ),
      { maxLength: 12 },
    )
    .map((parts) => parts.join('')),
);

describe('the laws of typed quantities', () => {
  test('readTyped() takes or refuses every text, and every text it offers is one it takes', () => {
    fc.assert(
      fc.property(anyText, unit, fc.boolean(), (typed, of, allowNone) => {
        const taken = readTyped(typed, { unit: of, allowNone });
        if (taken.ok) return;
        expect(taken.refusal.text).not.toBe('');
        expect(taken.refusal.offers.length).toBeGreaterThan(0);
        for (const offer of taken.refusal.offers)
          expect(readTyped(offer, { unit: of, allowNone }).ok).toBe(true);
      }),
      { numRuns: 4000 },
    );
  });

  test('readTyped() and readWritten() end at once on long texts', () => {
    const pieces = ['9', '1e', 'k', ',', '.', ' ', 'a', 'pp', '<', '..', 'wanders ', '±', '\u00a0'];
    fc.assert(
      fc.property(
        fc.constantFrom(...pieces),
        fc.integer({ min: 1000, max: 200_000 }),
        unit,
        (piece, times, of) => {
          const text = piece.repeat(times);
          expect(readTyped(text, { unit: of, allowNone: false }).ok).toBe(false);
          expect(readWritten(text, of).ok).toBe(false);
          expect(parseUnit(text).ok).toBe(false);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('readWritten() never throws, and what is wrong lies inside the text', () => {
    fc.assert(
      fc.property(anyText, fc.option(unit), (text, of) => {
        const read = readWritten(text, of);
        for (const { from, to } of read.ok ? [] : read.problems) {
          expect(0 <= from && from <= to && to <= text.length).toBe(true);
        }
      }),
      { numRuns: 4000 },
    );
  });

  test('what printQuantity() prints is read back as the same value in the same unit', () => {
    fc.assert(
      fc.property(short, unit, (number, of) => {
        const quantity = toStored(toBase(storedUnit(of), new Fraction(number)), of);
        const printed = printQuantity(quantity);
        const taken = readTyped(printed, { unit: of, allowNone: false });
        expect(taken).toMatchObject({
          ok: true,
          value: { understood: { kind: 'quantity', quantity }, remarks: [] },
        });
        expect(readWritten(printed, of)).toEqual({ ok: true, value: quantity });
      }),
      { numRuns: 2000 },
    );
  });

  test('what printQuantity() rounds is within half a step of the sixth digit', () => {
    const odd = fc.tuple(fc.integer({ min: 1, max: 10 ** 9 }), fc.integer({ min: 1, max: 10 ** 9 }));
    fc.assert(
      fc.property(odd, unit, ([n, d], of) => {
        const quantity = toStored(toBase(storedUnit(of), new Fraction(n, d)), of);
        const taken = readTyped(printQuantity(quantity), { unit: of, allowNone: false });
        if (!taken.ok || taken.value.understood.kind !== 'quantity') throw new Error('Expected a quantity');
        const off = fromStored(taken.value.understood.quantity)
          .sub(fromStored(quantity))
          .div(storedUnit(of).factor);
        expect(off.abs().lte(new Fraction(n, d).mul(5, 1_000_000))).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  test('a decimal comma means the same as a point', () => {
    fc.assert(
      fc.property(short, unit, (number, of) => {
        const as = { unit: of, allowNone: false };
        expect(readTyped(number.replace('.', ','), as)).toEqual(readTyped(number, as));
      }),
    );
  });

  test('a number with its unit means the same with any space between and around', () => {
    const space = fc.constantFrom('', ' ', '\u00a0', '\u2009', '\u202f', '\t', '  ');
    fc.assert(
      fc.property(short, unit, space, space, (number, of, before, between) => {
        const as = { unit: of, allowNone: false };
        expect(readTyped(`${before}${number}${between}${of}${before}`, as)).toEqual(
          readTyped(`${number} ${of}`, as),
        );
      }),
    );
  });

  test('compareQuantities() is an order: it agrees with the values and is turned round by exchange', () => {
    fc.assert(
      fc.property(short, short, unit, (a, b, of) => {
        const [left, right] = [a, b].map((text) => toStored(toBase(storedUnit(of), new Fraction(text)), of));
        if (left === undefined || right === undefined) throw new Error('Expected two quantities');
        expect(Math.sign(compareQuantities(left, right))).toBe(Math.sign(Number(a) - Number(b)) + 0);
        expect(compareQuantities(left, right) + compareQuantities(right, left)).toBe(0);
      }),
    );
  });
});
