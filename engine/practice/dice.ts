import { sha256 } from '@noble/hashes/sha2.js';
import { utf8ToBytes } from '@noble/hashes/utils.js';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plusFromState } from 'pure-rand/generator/xoroshiro128plus';

/** One stream of chance. The same name gives the same stream, whatever other streams were asked before. */
export interface Dice {
  /** 0 ≤ share < 1, even. */
  readonly share: () => number;
  /** 0 … `count` − 1. */
  readonly below: (count: number) => number;
  /** One of a list that is not empty. */
  readonly of: <T>(items: readonly T[]) => T;
  /** One by weight; weights need not add up to 1. */
  readonly weighted: <T>(items: readonly T[], weight: (item: T) => number) => T;
}

/** @param name what the stream is for: `['value', 'v5', 2]` */
export function diceOf(seed: number, name: readonly (string | number)[]): Dice {
  const bytes = sha256(utf8ToBytes(JSON.stringify([seed, ...name])));
  const words = new DataView(bytes.buffer, bytes.byteOffset, 16);
  const generator = xoroshiro128plusFromState([0, 4, 8, 12].map((at) => words.getInt32(at)));
  const share = (): number => uniformFloat64(generator);
  const of = <T>(items: readonly T[]): T => items[uniformInt(generator, 0, items.length - 1)] as T;
  return {
    share,
    below: (count) => uniformInt(generator, 0, count - 1),
    of,
    weighted: (items, weight) => {
      let left = share() * items.reduce((sum, item) => sum + weight(item), 0);
      const found = items.find((item) => {
        left -= weight(item);
        return left < 0;
      });
      return found ?? of(items);
    },
  };
}
