import { describe, expect, test } from 'vitest';
import { leadsOf } from '../../../player/parts/leads-of.ts';

const words = (points: string[], tools: string[]) =>
  leadsOf(points, tools).map(({ lead, point }) => `${lead}: ${point}`);

describe('leadsOf()', () => {
  test('puts the black lead of a meter on ground when one point is named', () => {
    expect(words(['pin 3'], ['meter'])).toEqual(['Red lead: pin 3', 'Black lead: ground']);
  });

  test('puts the black lead on the second point', () => {
    expect(words(['pin 3', 'pin 7'], ['meter'])).toEqual(['Red lead: pin 3', 'Black lead: pin 7']);
  });

  test('makes channels of the points for a scope', () => {
    expect(words(['clock', 'reset'], ['scope'])).toEqual([
      'Channel 1: clock',
      'Channel 2: reset',
      'Clip: ground',
    ]);
  });

  test('clips the scope to the ground that is named last', () => {
    expect(words(['clock', 'ground leg beside it'], ['scope'])).toEqual([
      'Tip: clock',
      'Clip: ground leg beside it',
    ]);
  });

  test('names no lead where nothing is connected', () => {
    expect(words(['the socket'], ['lens'])).toEqual(['At: the socket']);
    expect(words([], ['meter'])).toEqual([]);
  });
});
