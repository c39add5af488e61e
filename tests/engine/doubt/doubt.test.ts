import { describe, expect, test } from 'vitest';
import {
  isTooClose,
  lacksTool,
  noEquipment,
  parseInstrument,
  plusMinusOf,
  type Settler,
  settlers,
  settlerWords,
} from '../../../engine/doubt/index.ts';
import { parseFormula } from '../../../engine/formula/index.ts';
import type { DecisionRule, Equipment, Instrument } from '../../../engine/model/instrument.ts';
import type { Present } from '../../../engine/model/present.ts';
import type { Reading } from '../../../engine/model/reading.ts';
import { readWritten } from '../../../engine/quantity/index.ts';
import {
  allNormal,
  deriveObservation,
  eachBands,
  judgeAgain,
  memberReading,
  observe,
  parseScale,
  resolveScale,
} from '../../../engine/scale/index.ts';
import { expecting, readingOf, scaled, settingsOf, taken } from '../scale/quantity-reading.ts';

const instrument = (line: string): Instrument => taken(parseInstrument(line));
const bench = (rule: DecisionRule, ...lines: readonly string[]): Equipment => ({
  instruments: lines.map(instrument),
  lacking: [],
  rule,
});
const quantity = (text: string) => taken(readWritten(text, null));

const meter = 'bench meter (meter): 6 V ± (0.5 % + 2) at 1 mV; 60 V ± (0.8 % + 3) at 10 mV';
const guarded = bench('guarded', meter);
const rail: Reading = { ...expecting('3.3 V ± 5 %', 'V'), with: ['meter'] };
const nothing = settingsOf({});

describe('plusMinusOf()', () => {
  test('takes the smallest range that holds the value', () => {
    const of = (text: string) => plusMinusOf(instrument(meter), quantity(text))?.value.toFraction();
    expect(of('3.15 V')).toBe('71/4000'); // 0.01775
    expect(of('6 V')).toBe('4/125'); // 0.032
    expect(of('6.001 V')).toBe('9751/125000'); // 0.048008 + 0.03
    expect(of('-3.15 V')).toBe('71/4000');
    expect(of('100 V')).toBe(undefined);
  });

  test('minds what kind of voltage an instrument reads', () => {
    const scope = instrument('scope (scope): 20 Vpp ± 3 %; 50 V ± 2 %');
    expect(plusMinusOf(scope, quantity('1 Vpp'))?.value.toFraction()).toBe('3/100');
    expect(plusMinusOf(scope, quantity('1 V dc'))?.value.toFraction()).toBe('1/50');
    expect(plusMinusOf(scope, quantity('1 V rms'))).toBe(null);
    expect(plusMinusOf(scope, quantity('1 kHz'))).toBe(null);
  });
});

describe('observe() with an instrument', () => {
  test('leaves both bands open near a limit, with their parts', () => {
    const seen = taken(observe(rail, nothing, '3.13', guarded));
    expect(seen.bands).toEqual(['low', 'good']);
    expect(seen.doubt?.instrument).toBe('bench meter');
    expect(seen.doubt?.plusMinus).toEqual({ value: '353/20000', unit: 'mV' });
    // 3.135 V is 5 mV above 3.13 V: (17.65 + 5) / 35.3 of what is possible lies below
    expect(seen.doubt?.shares.map(({ band }) => band)).toEqual(['low', 'good']);
    expect(seen.doubt?.shares[0]?.share).toBeCloseTo(22.65 / 35.3, 12);
    expect(isTooClose(seen)).toBe(true);
  });

  test('by simple acceptance, counts what was shown and carries the mark', () => {
    const seen = taken(observe(rail, nothing, '3.13', { ...guarded, rule: 'simple' }));
    expect(seen.bands).toEqual(['low']);
    expect(isTooClose(seen)).toBe(true);
  });

  test('is in no doubt further away, without an instrument, or with one of another kind', () => {
    const far = taken(observe(rail, nothing, '3.3', guarded));
    expect([far.bands, isTooClose(far)]).toEqual([['good'], false]);
    expect(far.doubt?.shares).toEqual([{ band: 'good', share: 1 }]);
    expect(taken(observe(rail, nothing, '3.13')).doubt).toBe(null);
    expect(taken(observe({ ...rail, with: ['scope'] }, nothing, '3.13', guarded)).doubt).toBe(null);
    expect(taken(observe({ ...rail, with: [] }, nothing, '3.13', guarded)).doubt).not.toBe(null);
    expect(taken(observe(rail, nothing, '3..3.2', guarded)).doubt).toBe(null);
    expect(taken(observe(rail, nothing, '100 V', guarded)).doubt).toBe(null);
  });

  test('is not too close where the limit is as far away as the value can be off', () => {
    const exact = bench('guarded', 'meter (meter): 10 V ± 10 mV');
    const five = { ...scaled('low < 5 V < good', 'V', 'good'), with: ['meter'] };
    expect(taken(observe(five, nothing, '5.01', exact)).bands).toEqual(['good']);
    expect(taken(observe(five, nothing, '5.009', exact)).bands).toEqual(['low', 'good']);
  });

  test('takes the first instrument of the list that does', () => {
    const two = bench('guarded', 'pocket meter (meter): 2 V ± 1 %', meter);
    expect(taken(observe(rail, nothing, '3.13', two)).doubt?.instrument).toBe('bench meter');
    expect(taken(observe(rail, nothing, '1.5', two)).doubt?.instrument).toBe('pocket meter');
  });

  test('adds the width of a limit that rests on a reading of the known-good board', () => {
    const swing: Reading = { ...scaled('weak < twin * 60 % < good', 'V', 'good'), with: ['meter'] };
    const twin = (plusMinus: string | null): Present => ({
      ...nothing,
      twins: new Map([
        [
          'r',
          { value: quantity('5 V'), from: 'this job', ...(plusMinus && { plusMinus: quantity(plusMinus) }) },
        ],
      ]),
    });
    // ± 17.5 mV at 3.1 V; the limit stands at 3 V ± 60 % of 150 mV
    expect(taken(observe(swing, twin(null), '3.1', guarded)).bands).toEqual(['good']);
    const seen = taken(observe(swing, twin('150 mV'), '3.1', guarded));
    expect(seen.bands).toEqual(['weak', 'good']);
    expect(seen.doubt?.shares[0]?.share).toBeCloseTo((107.5 - 100) / 215, 12);
    expect(seen.used?.twin?.plusMinus).toEqual(quantity('150 mV'));
  });

  test('shares alike between bands that an unknown limit parts', () => {
    const open: Reading = { ...scaled('low < vcc < good < 5 V < high', 'V', 'good'), with: ['meter'] };
    const seen = taken(observe(open, nothing, '5', guarded));
    expect(seen.bands).toEqual(['low', 'good', 'high']);
    expect(seen.doubt?.shares).toEqual([
      { band: 'low', share: 0.25 },
      { band: 'good', share: 0.25 },
      { band: 'high', share: 0.5 },
    ]);
  });

  test('minds each of many alike, and what that means for the whole', () => {
    const measure = taken(parseScale('low < 4.75 V < good < 5.25 V < high', 'V'));
    const of = { kind: 'quantity', unit: 'V', scale: measure } as const;
    const bands = eachBands(3, measure.bands, ['good']);
    const rails: Reading = {
      ...readingOf({ kind: 'each', members: ['a', 'b', 'c'], of, normal: ['good'], bands }, [allNormal]),
      with: ['meter'],
    };
    const seen = taken(observe(rails, nothing, 'a 4.76; b 4.74; c 5', guarded));
    expect(seen.bands).toEqual(['all-normal', 'one-low', 'several-low']);
    const low = (volts: number) => {
      const a = volts * 0.005 + 0.002;
      return (4.75 - volts + a) / (2 * a);
    };
    const shares = Object.fromEntries((seen.doubt?.shares ?? []).map(({ band, share }) => [band, share]));
    expect(shares['all-normal']).toBeCloseTo((1 - low(4.76)) * (1 - low(4.74)), 12);
    expect(shares['several-low']).toBeCloseTo(low(4.76) * low(4.74), 12);
    expect(seen.doubt?.plusMinus).toEqual({ value: '27/1000', unit: 'mV' });
    const simple = taken(observe(rails, nothing, 'a 4.76; b 4.74; c 5', { ...guarded, rule: 'simple' }));
    expect(simple.bands).toEqual(['one-low']);
    expect(judgeAgain(rails, nothing, seen, 'simple').bands).toEqual(['one-low']);
  });

  test('is judged again with the width it was taken with', () => {
    const clock: Reading = expecting('vcc ± 5 %', 'V');
    const seen = taken(observe({ ...clock, with: ['meter'] }, settingsOf({ vcc: '5 V' }), '3.13', guarded));
    expect(seen.bands).toEqual(['low']);
    const again = judgeAgain(clock, settingsOf({ vcc: '3.3 V' }), seen);
    expect(again.bands).toEqual(['low', 'good']);
    expect(again.doubt?.plusMinus).toEqual(seen.doubt?.plusMinus);
    expect(judgeAgain(clock, settingsOf({ vcc: '3.3 V' }), seen, 'simple').bands).toEqual(['low']);
  });

  test('passes its width on to what is derived from it', () => {
    const ratio: Reading = {
      ...scaled('low < 0.95 < good < 1.05 < high', '', 'good'),
      from: taken(parseFormula('v33 / 3.3 V')),
    };
    const seen = taken(observe(rail, nothing, '3.13', guarded));
    expect(deriveObservation(ratio, nothing, () => seen).bands).toEqual(['low', 'good']);
    expect(deriveObservation(ratio, nothing, () => seen, 'simple').bands).toEqual(['low']);
  });
});

describe('settlers()', () => {
  const of = (reading: Reading, typed: string, equipment: Equipment, present: Present = nothing) =>
    settlers(
      reading,
      resolveScale(reading, present),
      taken(observe(reading, present, typed, equipment)),
      equipment,
    );
  const words = (found: readonly Settler[]) => found.map(settlerWords);

  test('offers another range, another instrument and an average, where they settle it', () => {
    const bigRange = 'old meter (meter): 6 V ± (1 % + 20) at 1 mV; 20 V ± 0.1 %';
    const fine = 'calibrator (calibrator): 10 V ± (0.0020 % + 0.0005 % of range)';
    const poor = 'panel meter (meter): 10 V ± 5 %';
    expect(words(of(rail, '3.145', bench('guarded', bigRange, fine, poor)))).toEqual([
      'the 20 V range of the old meter (± 3.14 mV)',
      'the calibrator (± 113 µV)',
    ]);
  });

  test('offers an average only where the digits are what is in the way', () => {
    // 0.1 % of 3.145 V is 3.145 mV, 20 digits are 20 mV, the limit is 10 mV away: (20 / 6.855)² = 8.5 → 9
    const digits = bench('guarded', 'meter (meter): 6 V ± (0.1 % + 20) at 1 mV');
    expect(of(rail, '3.145', digits)).toMatchObject([{ kind: 'average', of: 9 }]);
    expect(words(of(rail, '3.145', digits))[0]).toMatch(/^the average of 9 readings \(± 9\.81/);
    const reading = bench('guarded', 'meter (meter): 6 V ± (0.5 % + 2) at 1 mV');
    expect(of(rail, '3.145', reading)).toEqual([]);
    // More than 30 readings: (20 / 2.8)² = 51
    expect(of(rail, '3.141', digits)).toEqual([]);
  });

  test('asks for the twin, a setting or more tries where those are missing', () => {
    const swing: Reading = { ...scaled('weak < twin * 60 % < good', 'V', 'good'), with: ['meter'] };
    expect(of(swing, '3', guarded)).toEqual([{ kind: 'twin' }]);
    expect(words(of(expecting('vcc ± 5 %', 'V'), '3', noEquipment))).toEqual(['the value of "vcc"']);
    expect(words(of(readingOf({ kind: 'tries', enough: 20 }, ['always']), '10 of 10', noEquipment))).toEqual([
      '20 tries in a row',
    ]);
    expect(words([{ kind: 'twin' }])).toEqual(['the same reading on a known-good board']);
  });

  test('has nothing to offer where nothing is open', () => {
    expect(of(rail, '3.3', guarded)).toEqual([]);
    expect(of(readingOf({ kind: 'tries', enough: 20 }, ['always']), '20 of 20', noEquipment)).toEqual([]);
    expect(of(rail, '3.1..3.2', guarded)).toEqual([]);
    expect(of(rail, '3.13', noEquipment)).toEqual([]);
  });

  test('offers for many alike what settles every one of them that is open', () => {
    const members = ['a', 'b', 'c'];
    const scale = taken(parseScale('low < 4.75 V < good < 5.25 V < high', 'V'));
    const of = { kind: 'quantity', unit: 'V', scale } as const;
    const bands = eachBands(3, scale.bands, ['good']);
    const rails: Reading = {
      ...readingOf({ kind: 'each', members, of, normal: ['good'], bands }, [allNormal]),
      with: ['meter'],
    };
    const digits = 'meter (meter): 6 V ± (0.02 % + 20) at 1 mV';
    const found = (row: string, ...lines: readonly string[]) => {
      const equipment = bench('guarded', ...lines);
      const seen = taken(observe(rails, nothing, row, equipment));
      return words(settlers(rails, resolveScale(memberReading(rails), nothing), seen, equipment));
    };
    const fine = 'calibrator (calibrator): 10 V ± 2 mV';
    // (20 / 9.05)² = 4.9 and (20 / 5.05)² = 15.7 readings
    expect(found('a 4.76; b 4.744; c 5', digits, fine)).toEqual([
      'the calibrator (± 2 mV)',
      'the average of 16 readings (± 5.95 mV)',
    ]);
    expect(found('a 4.76; b 4.751; c 5', digits, fine)).toEqual([]);
    expect(found('a 5; b 5; c 5', digits, fine)).toEqual([]);
  });
});

describe('lacksTool()', () => {
  test('names the tool that is not there', () => {
    const lacking = { ...noEquipment, lacking: ['scope'] };
    expect(lacksTool({ ...rail, with: ['scope', 'probe'] }, lacking)).toBe('scope');
    expect(lacksTool(rail, lacking)).toBe(null);
  });
});
