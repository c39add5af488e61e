import type { Box } from '../combinations/box.ts';

/** A section of which not everything could be looked at, and why. */
export interface NotExact {
  readonly section: string;
  readonly why: string;
}

/** What can come of a check on the walks that lead to it. */
export interface CheckOnPaths {
  /** For each outcome whether some walk takes it. */
  readonly taken: readonly boolean[];
  /** Combinations that some walk meets and no outcome takes; they do not overlap. */
  readonly left: readonly Box[];
  /** The bands that each name can be in on entering, where that is less than all. */
  readonly known: Box;
}

/** What the walks of a tree come to. Where it is not exact, walks were added that nobody can take, never left out. */
export interface Paths {
  readonly reached: ReadonlySet<string>;
  /** By section id; checks that are not reached are not among them. */
  readonly checks: ReadonlyMap<string, CheckOnPaths>;
  readonly notExact: readonly NotExact[];
}
