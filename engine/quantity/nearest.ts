import { distance } from 'fastest-levenshtein';

/** The candidates that a slip of the finger could have meant, nearest first; three at most. */
export function nearest(text: string, candidates: readonly string[]): readonly string[] {
  const most = text.length < 2 ? 0 : Math.max(1, Math.floor(text.length / 3));
  const wanted = text.toLowerCase();
  return candidates
    .map((candidate) => ({ candidate, away: distance(wanted, candidate.toLowerCase()) }))
    .filter(({ candidate, away }) => away <= most && away < candidate.length)
    .sort((a, b) => a.away - b.away)
    .slice(0, 3)
    .map(({ candidate }) => candidate);
}
