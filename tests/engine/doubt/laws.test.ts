import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import type { Equipment } from '../../../engine/model/instrument.ts';
import { exactOf } from '../../../engine/quantity/index.ts';
import { bandsOf, observe, parseScale } from '../../../engine/scale/index.ts';
import { readingOf, settingsOf, taken } from '../scale/quantity-reading.ts';

const scale = fc
  .uniqueArray(fc.integer({ min: -500, max: 500 }), { minLength: 1, maxLength: 5 })
  .map((limits) => {
    const sorted = [...limits].sort((a, b) => a - b);
    const written = sorted.map((limit, at) => `b${at} < ${limit / 100} V < `).join('');
    const parsed = taken(parseScale(`${written}b${sorted.length}`, 'V'));
    return readingOf({ kind: 'quantity', unit: 'V', scale: parsed }, ['b1']);
  });

const accuracy = fc.record({
  ofReading: fc.integer({ min: 0, max: 50 }),
  ofRange: fc.integer({ min: 0, max: 20 }),
  digits: fc.integer({ min: 0, max: 30 }),
});
type Accuracy = typeof accuracy extends fc.Arbitrary<infer T> ? T : never;

const equipment = ({ ofReading, ofRange, digits }: Accuracy, rule: Equipment['rule']): Equipment => ({
  instruments: [
    {
      name: 'meter',
      tool: 'meter',
      ranges: [
        {
          unit: 'V',
          upTo: '10',
          ofReading: exactOf(new Fraction(ofReading, 1000)),
          ofRange: exactOf(new Fraction(ofRange, 1000)),
          digits,
          resolution: '1/1000',
        },
      ],
    },
  ],
  lacking: [],
  rule,
});

const typed = fc.integer({ min: -700, max: 700 }).map((hundredths) => `${hundredths / 100} V`);
const look = (
  reading: ReturnType<typeof readingOf>,
  text: string,
  given: Accuracy,
  rule: Equipment['rule'],
) => taken(observe(reading, settingsOf({}), text, equipment(given, rule)));

describe('the laws of doubt', () => {
  test('what counts by simple acceptance is among what counts guarded', () => {
    fc.assert(
      fc.property(scale, typed, accuracy, (reading, text, given) => {
        const [simple, guarded] = [
          look(reading, text, given, 'simple'),
          look(reading, text, given, 'guarded'),
        ];
        expect(simple.bands).toEqual(taken(observe(reading, settingsOf({}), text)).bands);
        for (const band of simple.bands) expect(guarded.bands).toContain(band);
        expect(simple.doubt).toEqual(guarded.doubt);
      }),
      { numRuns: 2000 },
    );
  });

  test('the parts of the bands add up to 1, stand in order, and are those of the guarded bands', () => {
    fc.assert(
      fc.property(scale, typed, accuracy, (reading, text, given) => {
        const { bands, doubt } = look(reading, text, given, 'guarded');
        if (doubt === null) return;
        expect(doubt.shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
        expect(doubt.shares.every(({ share }) => share > 0)).toBe(true);
        expect(doubt.shares.map(({ band }) => band)).toEqual(bands);
        const order = bandsOf(reading);
        const first = order.indexOf(bands[0] ?? '');
        expect(bands).toEqual(order.slice(first, first + bands.length));
      }),
      { numRuns: 2000 },
    );
  });

  test('a finer instrument never adds a band', () => {
    fc.assert(
      fc.property(scale, typed, accuracy, accuracy, (reading, text, a, b) => {
        const finer = {
          ofReading: Math.min(a.ofReading, b.ofReading),
          ofRange: Math.min(a.ofRange, b.ofRange),
          digits: Math.min(a.digits, b.digits),
        };
        const coarse = look(reading, text, a, 'guarded').bands;
        for (const band of look(reading, text, finer, 'guarded').bands) expect(coarse).toContain(band);
      }),
      { numRuns: 2000 },
    );
  });

  test('wherever within its width the value really lies, its band was among the possible ones', () => {
    fc.assert(
      fc.property(scale, typed, accuracy, fc.integer({ min: -99, max: 99 }), (reading, text, given, part) => {
        const { bands, doubt } = look(reading, text, given, 'guarded');
        if (doubt === null) return;
        const shift = new Fraction(doubt.plusMinus.value).mul(part, 100);
        const real = new Fraction(text.replace(' V', '')).add(shift);
        const at = observe(reading, settingsOf({}), `${real.toString(12)} V`);
        expect(bands).toContain(taken(at).bands[0]);
      }),
      { numRuns: 2000 },
    );
  });
});
