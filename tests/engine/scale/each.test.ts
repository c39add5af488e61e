import { describe, expect, test } from 'vitest';
import type { Measure, SingleMeasure } from '../../../engine/model/reading.ts';
import {
  allNormal,
  eachBands,
  expectedText,
  judgeAgain,
  observationText,
  observe,
} from '../../../engine/scale/index.ts';
import { expecting, readingOf, scaled, settingsOf, taken } from './quantity-reading.ts';

/** Many alike as an author declares them. */
const group = (
  members: readonly string[],
  of: SingleMeasure,
  bandsOfOne: readonly string[],
  ...normal: readonly string[]
) => {
  const measure: Measure = {
    kind: 'each',
    members,
    of,
    normal,
    bands: eachBands(members.length, bandsOfOne, normal),
  };
  return readingOf(measure, [allNormal]);
};

const single = (reading: ReturnType<typeof expecting>): SingleMeasure => {
  const { measure } = reading;
  if (measure.kind !== 'quantity') throw new Error('Expected a quantity');
  return measure;
};

const names = ['moves', 'stuck', 'floats'];
const lines = group(
  ['A0', 'A1', 'A2', 'A3', 'A4', 'A5', 'A6', 'A7'],
  { kind: 'options', options: names.map((name) => ({ name, means: null })) },
  names,
  'moves',
);
const rails = group(
  ['5 V', '12 V', '3.3 V'],
  single(scaled('none < 0.5 V < low < 4.75 V < good < 5.25 V < high', 'V', 'good')),
  ['none', 'low', 'good', 'high'],
  'good',
);

const look = (reading: typeof lines, typed: string) => observe(reading, settingsOf({}), typed);

describe('observe() of many alike', () => {
  test.each([
    ['A3 stuck, rest good', 'one-stuck', 'A3 stuck, 7 moves'],
    ['all good', 'all-normal', 'all moves'],
    ['A3 stuck, rest bad', null, null],
    ['A3 stuck, rest moves', 'one-stuck', 'A3 stuck, 7 moves'],
    ['rest moves; A3 = stuck', 'one-stuck', 'A3 stuck, 7 moves'],
    ['a3 STUCK, others normal', 'one-stuck', 'A3 stuck, 7 moves'],
    ['A3 A5 stuck; rest moves', 'several-stuck', 'A3, A5 stuck, 6 moves'],
    ['A3, A5 are stuck, the rest moves', 'several-stuck', 'A3, A5 stuck, 6 moves'],
    ['A3 and A5 stuck, rest moves', 'several-stuck', 'A3, A5 stuck, 6 moves'],
    ['A0-A6 floats, A7 stuck', 'stuck+floats', 'A0, A1, A2, A3, A4, A5, A6 floats, A7 stuck'],
    ['A0..A2 stuck; A3 floats; rest moves', 'stuck+floats', 'A0, A1, A2 stuck; A3 floats; 4 moves'],
    ['all stuck', 'all-stuck', 'all stuck'],
    ['all moves', 'all-normal', 'all moves'],
    ['all normal', 'all-normal', 'all moves'],
    ['all of them stuck', 'all-stuck', 'all stuck'],
    ['A0: stuck, rest the same', 'all-stuck', 'all stuck'],
    ['moves; moves; moves; stuck; moves; moves; moves; moves', 'one-stuck', 'A3 stuck, 7 moves'],
    ['A0 stuck\nrest moves', 'one-stuck', 'A0 stuck, 7 moves'],
  ])('reads the row "%s" as %s', (typed, band, text) => {
    const seen = look(lines, typed);
    expect(seen.ok ? seen.value.bands : null).toEqual(band && [band]);
    expect(seen.ok ? observationText(seen.value) : null).toBe(text);
  });

  test('keeps what each member shows, in their order', () => {
    const { understood } = taken(look(rails, '3.3 V 4.2; 5 V 4,9 V; 12 V good'));
    expect(understood).toEqual({
      kind: 'each',
      normal: ['good'],
      members: [
        {
          name: '5 V',
          understood: { kind: 'quantity', quantity: { value: '49/10', unit: 'V' } },
          bands: ['good'],
        },
        { name: '12 V', understood: { kind: 'option', option: 'good' }, bands: ['good'] },
        {
          name: '3.3 V',
          understood: { kind: 'quantity', quantity: { value: '21/5', unit: 'V' } },
          bands: ['low'],
        },
      ],
    });
    expect(observationText({ understood })).toBe('3.3 V 4.2 V (low), 2 good');
  });

  test('tells names from values where both are numbers', () => {
    const pins = group(
      ['1', '2', '3', '4'],
      single(expecting('5 V ± 5 %', 'V')),
      ['low', 'good', 'high'],
      'good',
    );
    expect(observationText(taken(look(pins, '1 4; 2 4.9; rest 5,0')))).toBe('1 4 V (low), 3 good');
    expect(observationText(taken(look(pins, '1 2 4.1, rest normal')))).toBe('1, 2 4.1 V (low), 2 good');
    expect(observationText(taken(look(pins, '4.9; 5; 5.1; 6')))).toBe('4 6 V (high), 3 good');
  });

  test('leaves the band of the whole open as far as a member is', () => {
    expect(taken(look(rails, '5 V 4.7..4.8; rest 5')).bands).toEqual(['all-normal', 'one-low']);
    expect(taken(look(rails, '5 V 4.7..4.8; 12 V 6; 3.3 V 5')).bands).toEqual(['one-high', 'low+high']);
  });

  test.each([
    [
      'A3 stuck',
      'A0, A1, A2, A4, A5 and 2 more are not told: name them, or end with "rest" and what the rest shows',
      ['A3 stuck, rest moves', 'all moves', 'all stuck', 'all floats'],
    ],
    [
      'A0-A6 moves',
      'A7 is not told: name it, or end with "rest" and what the rest shows',
      ['A0-A6 moves, rest moves', 'all moves', 'all stuck', 'all floats'],
    ],
    [
      'stuck',
      '"stuck" does not say which one it is about: begin with a name (A0, A1, A2, A3, A4 and 3 more), "rest" or "all"',
      ['all stuck', 'all moves', 'all floats'],
    ],
    [
      'A3 stuck, A3 moves, rest moves',
      '"A3" stands in the row twice',
      ['all moves', 'all stuck', 'all floats'],
    ],
    [
      'rest moves, rest stuck',
      'The row says twice what the rest is',
      ['all moves', 'all stuck', 'all floats'],
    ],
    ['', 'Nothing was typed', ['all moves', 'all stuck', 'all floats']],
  ])('refuses the row "%s"', (typed, text, offers) => {
    const seen = look(lines, typed);
    expect(seen.ok ? null : seen.refusal).toEqual({ text, offers });
  });

  test('passes on what is wrong with one value, and offers the row with it put right', () => {
    const seen = look(lines, 'A3 stuk, rest moves');
    expect(seen.ok ? null : seen.refusal.text).toBe('A3: "stuk" is not one of moves, stuck, floats');
    expect(seen.ok ? null : seen.refusal.offers[0]).toBe('A3 stuck, rest moves');
    const rail = look(rails, '5 V 5 Hz, rest good');
    expect(rail.ok ? null : rail.refusal.text).toContain('another kind of unit');
  });

  test('wants a value of whatever is out of normal', () => {
    expect(look(rails, '5 V low, rest good').ok).toBe(false);
  });

  test('says what each of them should show', () => {
    expect(expectedText(lines, settingsOf({}))).toBe('all moves');
    expect(expectedText(rails, settingsOf({}))).toBe('all 4.75 V .. 5.25 V');
  });
});

describe('judgeAgain()', () => {
  test('judges every member by the settings as they are now', () => {
    const clocks = group(
      ['C0', 'C1', 'C2'],
      single(expecting('fsb ± 1 %', 'MHz')),
      ['low', 'good', 'high'],
      'good',
    );
    const seen = taken(observe(clocks, settingsOf({ fsb: '40 MHz' }), 'C0 33; rest 40'));
    expect(seen.bands).toEqual(['one-low']);
    const again = judgeAgain(clocks, settingsOf({ fsb: '33 MHz' }), seen);
    expect(again.bands).toEqual(['several-high']);
    expect(observationText(again)).toBe('C1, C2 40 MHz (high), 1 good');
    expect(again.used?.limits[0]).toEqual({ value: '32670000', unit: 'MHz' });
  });

  test('keeps the band none where the word was typed', () => {
    const reading = scaled('none < vcc * 10 % < low < 4 V < good', 'V', 'good');
    const typed = taken(observe(reading, settingsOf({}), 'none'));
    expect(judgeAgain(reading, settingsOf({}), typed).bands).toEqual(['none']);
    const zero = taken(observe(reading, settingsOf({}), '0'));
    expect(judgeAgain(reading, settingsOf({}), zero).bands).toEqual(['none', 'low']);
    expect(judgeAgain(reading, settingsOf({ vcc: '5 V' }), zero).bands).toEqual(['none']);
  });
});
