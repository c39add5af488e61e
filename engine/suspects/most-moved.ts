import { factorWords } from './move-words.ts';
import type { Move } from './moves-of.ts';

/** The moves that are worth telling, those first that did most. */
export const mostMoved = (moves: readonly Move[], most: number): readonly Move[] =>
  moves
    .filter(({ logOdds }) => factorWords(logOdds) !== '1')
    .toSorted((a, b) => Math.abs(b.logOdds) - Math.abs(a.logOdds))
    .slice(0, most);
