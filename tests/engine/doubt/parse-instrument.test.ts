import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseInstrument, printInstrument } from '../../../engine/doubt/index.ts';
import type { Instrument } from '../../../engine/model/instrument.ts';

const parse = (text: string): Instrument => {
  const parsed = parseInstrument(text);
  if (!parsed.ok) throw new Error(parsed.refusal.text);
  return parsed.value;
};

const refusal = (text: string) => {
  const parsed = parseInstrument(text);
  return parsed.ok ? null : parsed.refusal;
};

describe('parseInstrument()', () => {
  test('reads a name, the tool it is and every range', () => {
    expect(
      parse(
        'bench meter (meter): 6 V ± (0.5 % + 2) at 1 mV; 60 V ± (0.8 % + 3) at 10 mV; 6 kΩ ± (1 % + 2) at 1 Ω',
      ),
    ).toEqual({
      name: 'bench meter',
      tool: 'meter',
      ranges: [
        { unit: 'V', upTo: '6', ofReading: '1/200', ofRange: '0', digits: 2, resolution: '1/1000' },
        { unit: 'V', upTo: '60', ofReading: '1/125', ofRange: '0', digits: 3, resolution: '1/100' },
        { unit: 'Ω', upTo: '6000', ofReading: '1/100', ofRange: '0', digits: 2, resolution: '1' },
      ],
    });
  });

  test.each([
    ['10 V ± (0.0020 % + 0.0005 % of range)', { ofReading: '1/50000', ofRange: '1/200000', digits: 0 }],
    ['10 V +- (0,5% rdg + 0,1% rng)', { ofReading: '1/200', ofRange: '1/1000' }],
    ['10 V +/- 0.5 % of reading', { ofReading: '1/200', digits: 0, resolution: '0' }],
    [
      '100 MHz ± (25 ppm + 1 digit) @ 1 Hz',
      { unit: 'Hz', upTo: '100000000', ofReading: '1/40000', digits: 1 },
    ],
    ['600 mV ± (0.5 % + 3 counts) at 0.1 mV', { unit: 'V', upTo: '3/5', digits: 3, resolution: '1/10000' }],
    ['20 Vpp ± (3 % + 50 mVpp)', { unit: 'Vpp', digits: 1, resolution: '1/20' }],
    ['10 V ± 2 dgt at 1 mV', { ofReading: '0', digits: 2 }],
    ['10 V ± (2 + 0.5 %) at 1 mV', { ofReading: '1/200', digits: 2 }],
    ['10 V ± (3 mV + 1 % fs)', { ofRange: '1/100', digits: 1, resolution: '3/1000' }],
    ['200 °C ± (1 % + 2) at 0.1 °C', { unit: '°C', resolution: '1/10' }],
  ])('reads the range "%s"', (range, found) => {
    expect(parse(`pocket meter (meter): ${range}`).ranges).toMatchObject([found]);
  });

  test.each([
    ['', 'Nothing was typed'],
    [
      'bench meter: 6 V ± 1 %',
      '"bench meter: 6 V ± 1 %" does not begin with a name, the tool it is in brackets, and a colon',
    ],
    ['bench meter (meter):', '"bench meter" has no range: write one behind the colon'],
    ['m (meter): 6 V', '"6 V" is not a range: write its greatest value, ±, and how far it can be off'],
    [
      'm (meter): 6 V ± (0.5 % + 2)',
      '"6 V ± (0.5 % + 2)" counts digits and does not say what the last one is worth',
    ],
    ['m (meter): 6 v ± 1 %', '"6 v" is not a number with a unit: did you mean "V"?'],
    [
      'm (meter): 0 V ± 1 %',
      '"0 V" is not the greatest value of a range: give a value above zero with its unit',
    ],
    ['m (meter): 6 V ± (1 % + 2) at 1 Ω', '"1 Ω" is not what a digit of this range can be worth'],
    ['m (meter): 6 V ± 200 %', '"200 %" is more than the whole value'],
    ['m (meter): 6 V ± (1 % + 1 %)', '"(1 % + 1 %)" says the same part of the accuracy twice'],
    ['m (meter): 6 V ± (1 mV + 2) at 1 mV', '"(1 mV + 2)" gives an amount and digits: one of them is kept'],
    [
      'm (meter): 6 V ± 3 Hz',
      '"3 Hz" is no part of an accuracy: write per cent of the reading, "% of range", or a count of digits',
    ],
  ])('refuses "%s"', (text, why) => {
    expect(refusal(text)?.text).toBe(why);
  });

  test('offers the line with what was left out', () => {
    expect(refusal('m (meter): 6 V ± (0.5 % + 2)')?.offers).toEqual(['m (meter): 6 V ± (0.5 % + 2) at 1 V']);
    expect(refusal('meter: 6 V ± 1 %')?.offers[0]).toBe('meter (meter): 6 V ± 1 %');
  });
});

describe('the laws of instrument lines', () => {
  const decimal = (most: number) => fc.integer({ min: 1, max: most * 1000 }).map((n) => `${n / 1000}`);
  const range = fc
    .tuple(
      fc.constantFrom('V', 'mV', 'Vpp', 'kΩ', 'MHz', 'µs', 'mA', '°C', 'V ac'),
      decimal(900),
      decimal(5),
      fc.option(decimal(2)),
      fc.option(fc.tuple(fc.integer({ min: 1, max: 50 }), fc.constantFrom('1', '0.1', '10'))),
    )
    .map(([unit, upTo, ofReading, ofRange, digits]) => {
      const parts = [
        `${ofReading} %`,
        ...(ofRange ? [`${ofRange} % of range`] : []),
        ...(digits ? [`${digits[0]}`] : []),
      ];
      return `${upTo} ${unit} ± (${parts.join(' + ')})${digits ? ` at ${digits[1]} ${unit}` : ''}`;
    });

  test('an instrument that is printed reads back as the same', () => {
    fc.assert(
      fc.property(fc.array(range, { minLength: 1, maxLength: 6 }), (ranges) => {
        const instrument = parse(`scope, the old one (scope): ${ranges.join('; ')}`);
        expect(parse(printInstrument(instrument))).toEqual(instrument);
      }),
      { numRuns: 500 },
    );
  });

  test('every text is read or refused, and every line offered is read', () => {
    const part = fc.constantFrom(
      'meter',
      ' (',
      ')',
      ':',
      ' ',
      '6',
      ' V',
      'mV',
      ' ± ',
      '+-',
      '0.5 %',
      ' + ',
      '2',
      ' at ',
      '1',
      ';',
      'ppm',
      ' of range',
      ',',
      'Ω',
      '-',
    );
    const text = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 60 }),
      fc.array(part, { maxLength: 20 }).map((parts) => parts.join('')),
      fc.array(part, { maxLength: 14 }).map((parts) => `m (meter): 6 V ± ${parts.join('')}`),
    );
    fc.assert(
      fc.property(text, (line) => {
        const why = refusal(line);
        if (why === null) return;
        expect(why.text).not.toBe('');
        expect(why.offers.length).toBeGreaterThan(0);
        for (const offer of why.offers) expect(refusal(offer)).toBe(null);
      }),
      { numRuns: 5000 },
    );
  });
});
