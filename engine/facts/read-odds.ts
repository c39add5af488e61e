import { type Odds, usualOdds } from '../model/odds.ts';
import type { FactsContext } from './facts-context.ts';
import { type RawTable, tableOf } from './raw.ts';
import { readShareOf, type ShareRange } from './read-share-of.ts';

interface OddsKey extends ShareRange {
  readonly key: string;
  readonly of: keyof Odds;
}

/** Whoever misreads more often than not reads nothing, and where nothing is ever another way there is nothing to weigh. */
const keys: readonly OddsKey[] = [
  { key: 'slip', of: 'slip', most: 50, included: true },
  { key: 'unlisted', of: 'unlisted', most: 100, included: false },
  { key: 'unlisted normal', of: 'unlistedNormal', most: 100, included: false },
];

/** `{ slip: 2 %, unlisted: 5 %, unlisted normal: 80 % }`, the usual one for each that is not given; null where none is. */
export function readOdds(data: RawTable, context: FactsContext): Odds | null {
  const table = tableOf(data.odds);
  const given = keys.flatMap(({ key, of, ...range }) => {
    const share = readShareOf(table[key], ['odds', key], range, context);
    return share === null ? [] : [[of, share] as const];
  });
  return given.length === 0 ? null : { ...usualOdds, ...Object.fromEntries(given) };
}
