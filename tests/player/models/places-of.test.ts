import { describe, expect, test } from 'vitest';
import { placesOf } from '../../../player/models/places-of.ts';
import { benchSheet } from '../helpers/bench-sheet.ts';

const board = benchSheet();
const told = (id: string, like: string | null = null) =>
  placesOf(board, { id, like }).map(({ picture, touch, near }) => ({
    picture: picture.id,
    touch: touch.map(({ mark, point }) => `${mark} ${point.is}`.trim()),
    near: near.map(({ mark, point }) => `${mark} ${point.is}`),
  }));

describe('placesOf()', () => {
  test('numbers several places, and names another one close by with a letter', () => {
    expect(told('v5')).toEqual([
      {
        picture: 'top',
        touch: ['1 slot contact B3', '2 slot contact B1, ground'],
        near: ['a plug contact 1'],
      },
    ]);
  });

  test('gives a single place no number', () => {
    expect(told('pg')[0]?.touch).toEqual(['plug contact 1']);
  });

  test('parts places on both sides of the board, each under its own number, and leaves words without a picture out', () => {
    expect(told('cpu_clk').map(({ picture, touch }) => [picture, touch])).toEqual([
      ['top', ['1 socket pin C3']],
      ['bottom', ['2 socket pad C3']],
    ]);
  });

  test('takes the places of the reading it is like', () => {
    expect(told('v5_bare', 'v5')[0]?.touch).toHaveLength(2);
    expect(told('v5_bare')).toEqual([]);
  });
});
