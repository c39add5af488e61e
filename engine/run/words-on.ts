import { bandsOf } from '../scale/index.ts';
import type { Known } from './known.ts';
import type { LoadedTree } from './load-tree.ts';

interface Words {
  readonly loaded: LoadedTree;
  readonly history: ReadonlyMap<string, readonly Known[]>;
}

/** Every word on a reading that counts in the present tree, oldest first. A reading that another tree cut into other
 *  bands is another reading. */
export function wordsOn({ history, loaded }: Words, reading: string): readonly Known[] {
  const words = history.get(reading) ?? [];
  const found = loaded.readings.get(reading);
  if (found === undefined) return [];
  const bands = bandsOf(found);
  return words.every(({ cut }) => isSame(cut, bands)) ? words : words.filter(({ cut }) => isSame(cut, bands));
}

const isSame = (a: readonly string[], b: readonly string[]): boolean =>
  a === b || (a.length === b.length && a.every((band, index) => band === b[index]));
