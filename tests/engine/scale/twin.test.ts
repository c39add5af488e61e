import { describe, expect, test } from 'vitest';
import type { Present, Twin } from '../../../engine/model/present.ts';
import {
  checkScale,
  expectedBecause,
  expectedText,
  judge,
  observe,
  parseScale,
  resolveScale,
  settingsOf as settingsUsed,
  twinOf,
} from '../../../engine/scale/index.ts';
import { quantitySetting, scaled, settingsOf, taken } from './quantity-reading.ts';

const millivolts = (value: number) => ({ value: `${value}/1000`, unit: 'V' });
const swing = scaled('weak < twin * 60 % < good < twin * 2 + vcc / 10 < wild', 'V', 'good');
const withUsual = { ...swing, usual: millivolts(1000) };

const present = (value: number | null, from: Twin['from'] = 'this job'): Present => ({
  ...settingsOf({ vcc: '5 V' }),
  twins: new Map(value === null ? [] : [['r', { value: millivolts(value), from }]]),
});

describe('a limit that rests on the known-good board', () => {
  test('takes the twin read in this job or given by the sheet before the usual value', () => {
    expect(twinOf(withUsual, present(1300))).toEqual({ value: millivolts(1300), from: 'this job' });
    expect(twinOf(withUsual, present(1200, 'board sheet'))?.from).toBe('board sheet');
    expect(twinOf(withUsual, present(null))).toEqual({ value: millivolts(1000), from: 'usual' });
    expect(twinOf(swing, present(null))).toBe(null);
  });

  test('is cut by what the twin shows, and the entry keeps which one that was', () => {
    expect(expectedText(swing, present(1300))).toBe('0.78 V .. 3.1 V');
    expect(expectedText(swing, present(1000))).toBe('0.6 V .. 2.5 V');
    const seen = taken(observe(swing, present(1300), '0.7'));
    expect(seen.bands).toEqual(['weak']);
    expect(seen.used?.twin).toEqual({ value: millivolts(1300), from: 'this job' });
    const usual = taken(observe(withUsual, present(null), '0.7'));
    expect(usual.bands).toEqual(['good']);
    expect(usual.used?.twin?.from).toBe('usual');
  });

  test('leaves the bands on both sides open where nothing is known of a twin', () => {
    const resolved = resolveScale(swing, present(null));
    expect(resolved).toMatchObject({ limits: [null, null], missing: ['twin'], twin: null });
    const quantity = millivolts(700);
    expect(judge(swing, resolved, { kind: 'quantity', quantity })).toEqual(['weak', 'good', 'wild']);
    expect(expectedText(swing, present(null))).toBe('depends on the known-good board');
    expect(taken(observe(swing, present(null), '0.7')).used).toBe(null);
  });

  test('is no setting, but one of the reasons for what is expected', () => {
    expect(settingsUsed(swing)).toEqual(['vcc']);
    const declared = new Map([['vcc', quantitySetting('vcc', 'V', null)]]);
    const because = (at: Present, reading = swing) => expectedBecause(reading, at, declared).at(-1);
    expect(because(present(1300))).toEqual({
      setting: 'twin',
      is: 'The known-good board, read in this job',
      value: '1.3 V',
    });
    expect(because(present(1300, 'board sheet'))?.is).toBe('The known-good board, by the board sheet');
    expect(because(present(null), withUsual)).toMatchObject({
      is: 'A known-good board, as usual',
      value: '1 V',
    });
    expect(because(present(null))).toMatchObject({ is: 'The known-good board', value: null });
  });

  test('passes the check of a scale, which looks at its order at the usual value', () => {
    const scale = taken(parseScale('weak < twin * 60 % < good < 1 V < wild', 'V'));
    expect(checkScale(scale, 'V', [])).toEqual([]);
    expect(checkScale(scale, 'V', [], millivolts(1000))).toEqual([]);
    expect(checkScale(scale, 'V', [], millivolts(2000))).toMatchObject([
      { code: 'limits-order', lower: '1.2 V', upper: '1 V', when: 'twin = 2 V' },
    ]);
    expect(checkScale(taken(parseScale('low < twin * 1 Hz < good', 'V')), 'V', [])).toMatchObject([
      { code: 'wrong-unit', expected: 'V' },
    ]);
  });

  test('is as doubtful as the twin was read', () => {
    const value = millivolts(1000);
    const at: Present = {
      ...settingsOf({ vcc: '5 V' }),
      twins: new Map([['r', { value, from: 'this job', plusMinus: millivolts(50) }]]),
    };
    // 60 % and 200 % of ± 50 mV
    expect(resolveScale(swing, at).limitDoubts).toEqual(['3/100', '1/10']);
    expect(resolveScale(swing, present(1000)).limitDoubts).toEqual([null, null]);
  });
});
