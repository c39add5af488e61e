import { describe, expect, test } from 'vitest';
import { narrow } from '../../../player/models/narrow.ts';

const symptoms = ['Fans turn, screen stays black', 'It beeps and shows nothing', 'Café computer: no picture'];
const of = (typed: string) => narrow(symptoms, typed, (text) => text);

describe('narrow()', () => {
  test('keeps everything while nothing is typed', () => {
    expect(of('  ')).toEqual(symptoms);
  });

  test('wants every word, in any order, parts of words being enough', () => {
    expect(of('black fan')).toEqual([symptoms[0]]);
    expect(of('black beep')).toEqual([]);
  });

  test('does not mind letter case and accents', () => {
    expect(of('CAFE')).toEqual([symptoms[2]]);
  });
});
