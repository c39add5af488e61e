import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { parseFormula } from '../../../engine/formula/index.ts';
import type { Observation } from '../../../engine/model/observation.ts';
import type { Reading } from '../../../engine/model/reading.ts';
import { deriveObservation, observe, possibleBands } from '../../../engine/scale/index.ts';
import { readingOf, scaled, settingsOf, taken } from './quantity-reading.ts';

const present = settingsOf({ bus: '4 MHz' });
const input = (id: string, scale: string): Reading => ({ ...scaled(scale, 'MHz', 'good'), id });
const inputs = [
  input('a', 'none < 1 MHz < slow < bus * 99 % < good < bus * 101 % < fast'),
  input('b', 'slow < 3 MHz < good < 5 MHz < fast'),
  input('c', 'none < 500 kHz < slow < 3.5 MHz < good < 4.5 MHz < fast'),
];

const yesNo = readingOf({ kind: 'options', options: ['yes', 'no'].map((name) => ({ name, means: null })) }, [
  'no',
]);
const plain = scaled('low < 0.6 < weak < 0.95 < good < 1.05 < high < 2 < absurd', '', 'good');
const derived: readonly Reading[] = (
  [
    ['factor(a / bus, b / 4 MHz, c / 4 MHz)', plain],
    ['spread(a / bus, b / 4 MHz, c / 4 MHz)', plain],
    ['factor(a / bus, b / 4 MHz)', plain],
    ['a / b', plain],
    ['max(a, b) / min(b, c)', plain],
    ['abs(a - b) / bus', plain],
    ['(a + b) / (b + c)', plain],
    ['ratio(a, bus) * ratio(c, b)', plain],
    ['a > b', yesNo],
    ['a >= bus * 101 %', yesNo],
    ['max(a, c) < b', yesNo],
  ] as const
).map(([from, reading]) => ({ ...reading, from: taken(parseFormula(from, { comparison: true })) }));

/** Values at and around every limit. */
const tidy = fc.oneof(
  fc.constantFrom('0', '0.5', '1', '3', '3.5', '3.96', '4', '4.04', '4.5', '5', 'none', '9'),
  fc.integer({ min: -50, max: 700 }).map((hundredths) => String(hundredths / 100)),
);

const untidy = fc.oneof(
  fc
    .tuple(fc.integer({ min: 0, max: 600 }), fc.integer({ min: 0, max: 200 }))
    .map(([from, width]) => `${from / 100} .. ${(from + width) / 100}`),
  fc.constantFrom('> 4', '>= 4.04', '< 3', '<= 3.96', 'OL'),
);

/** What was read of each input; null where it was not. */
const looksAt = (typed: fc.Arbitrary<string>) =>
  fc.tuple(...inputs.map(() => fc.option(typed, { freq: 6 }))).map((texts) =>
    inputs.map((reading, at): Observation | null => {
      const seen = texts[at] === null ? null : observe(reading, present, texts[at] ?? '');
      return seen?.ok ? seen.value : null;
    }),
  );

const latest = (seen: readonly (Observation | null)[]) => (id: string) =>
  seen[inputs.findIndex((reading) => reading.id === id)] ?? null;

describe('the laws of derived readings', () => {
  test('no band that values lead to is missing among those that their bands make possible', () => {
    fc.assert(
      fc.property(fc.constantFrom(...derived), looksAt(tidy), (reading, seen) => {
        const rows = inputs.flatMap((one, at) => {
          const bands = seen[at]?.bands;
          return bands === undefined ? [] : [{ reading: one, bands }];
        });
        const possible = possibleBands(reading, rows, present);
        for (const band of deriveObservation(reading, present, latest(seen)).bands) {
          expect(possible).toContain(band);
        }
      }),
      { numRuns: 5000 },
    );
  });

  test('a tidier input never adds a band', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...derived),
        looksAt(fc.oneof(tidy, untidy)),
        fc.integer({ min: 0, max: 2 }),
        (reading, seen, which) => {
          const wide = seen[which] ?? null;
          if (wide?.understood.kind !== 'interval') return;
          const { from, to } = wide.understood;
          if (from === null || to === null) return;
          const middle = new Fraction(from).add(new Fraction(to)).div(2e6);
          const narrow = taken(observe(inputs[which] as Reading, present, `${middle.toString(9)} MHz`));
          const bands = deriveObservation(reading, present, latest(seen)).bands;
          const tidied = seen.map((one, at) => (at === which ? narrow : one));
          for (const band of deriveObservation(reading, present, latest(tidied)).bands) {
            expect(bands).toContain(band);
          }
        },
      ),
      { numRuns: 3000 },
    );
  });

  test('more possible bands of an input never take one from the result', () => {
    const some = (reading: Reading) =>
      reading.measure.kind === 'quantity'
        ? fc.subarray([...reading.measure.scale.bands], { minLength: 1 })
        : fc.constant([]);
    fc.assert(
      fc.property(
        fc.constantFrom(...derived),
        fc.tuple(...inputs.map(some)),
        fc.tuple(...inputs.map(some)),
        (reading, fewer, more) => {
          const rows = (bands: readonly (readonly string[])[]) =>
            inputs.map((one, at) => ({ reading: one, bands: bands[at] ?? [] }));
          const all = fewer.map((bands, at) => [...new Set([...bands, ...(more[at] ?? [])])]);
          const possible = possibleBands(reading, rows(all), present);
          for (const band of possibleBands(reading, rows(fewer), present)) expect(possible).toContain(band);
        },
      ),
      { numRuns: 500 },
    );
  });
});
