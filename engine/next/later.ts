import type { Check } from './check.ts';

/** Something that must have been seen first, in one of `bands`; null where it only has to be seen. */
export interface Before {
  readonly reading: string;
  readonly bands: readonly string[] | null;
}

/** A check that cannot be taken yet, and all that must be seen before, what that needs in turn among it. */
export interface Later {
  readonly check: Check;
  readonly before: readonly Before[];
}
