import { type Box, intersect, subtract } from './box.ts';

/** Which lines of a first-match list can be taken by combinations of `from`. */
export interface FirstMatches {
  /** For each line, one combination set that takes it, or null where none does. */
  readonly taken: readonly (Box | null)[];
  /** Combinations that no line takes. */
  readonly left: readonly Box[];
  /** False where it would have taken more than `most` boxes: then nothing is certain. */
  readonly exact: boolean;
}

/** Walks the lines in order; each takes its part of what the lines above it have left.
 *  `lines[i]` null takes everything. */
export function firstMatches(from: Box, lines: readonly (Box | null)[], most = Infinity): FirstMatches {
  let left: Box[] = [from];
  let exact = true;
  const taken = lines.map((line) => {
    exact &&= left.length <= most;
    if (!exact) return from;
    if (line === null) {
      const all = left[0] ?? null;
      left = [];
      return all;
    }
    let witness: Box | null = null;
    const next: Box[] = [];
    for (const box of left) {
      witness ??= intersect(box, line);
      next.push(...subtract(box, line));
    }
    left = next;
    return witness;
  });
  return { taken, left, exact: exact && left.length <= most };
}
