import { distance } from 'fastest-levenshtein';

/** The names that `name` was probably meant to be, nearest first, three at the most. */
export function nearest(name: string, names: Iterable<string>): readonly string[] {
  const limit = Math.max(1, Math.floor(name.length / 3));
  const lower = name.toLowerCase();
  return [...names]
    .map((candidate) => ({ candidate, far: distance(lower, candidate.toLowerCase()) }))
    .filter(
      ({ far, candidate }) => far <= limit || (lower.length > 2 && candidate.toLowerCase().startsWith(lower)),
    )
    .sort((a, b) => a.far - b.far || a.candidate.localeCompare(b.candidate))
    .slice(0, 3)
    .map(({ candidate }) => candidate);
}
