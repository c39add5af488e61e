import { distance } from 'fastest-levenshtein';

/** The names that `name` was probably meant to be, nearest first, three at the most. */
export function nearest(name: string, names: Iterable<string>): readonly string[] {
  const limit = Math.max(1, Math.floor(name.length / 3));
  const lower = name.toLowerCase();
  return [...names]
    .map((candidate) => ({ candidate, far: slips(lower, candidate.toLowerCase()) }))
    .filter(
      ({ far, candidate }) => far <= limit || (lower.length > 2 && candidate.toLowerCase().startsWith(lower)),
    )
    .sort((a, b) => a.far - b.far || a.candidate.localeCompare(b.candidate))
    .slice(0, 3)
    .map(({ candidate }) => candidate);
}

/** Letters to add, drop or change; two neighbours that changed places are one slip of the hand. */
function slips(a: string, b: string): number {
  const at = [...a].findIndex((letter, index) => letter !== b[index]);
  const swapped = `${a.slice(0, at)}${a[at + 1] ?? ''}${a[at] ?? ''}${a.slice(at + 2)}`;
  return at >= 0 && swapped === b ? 1 : distance(a, b);
}
