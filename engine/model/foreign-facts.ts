import type { BoardCondition } from './compiled-tree.ts';
import type { Fault } from './fault.ts';
import type { Reading } from './reading.ts';
import type { Setting } from './setting.ts';

/** What a file knows from other files: shared catalogues, and the local readings and ends of the procedures it follows. */
export interface ForeignFacts {
  readonly conditions: readonly BoardCondition[];
  readonly settings: readonly Setting[];
  readonly readings: readonly Reading[];
  readonly faults: readonly Fault[];
  /** The names of those readings that are one of many alike, as the calls of the file give them: `the short one of rails`. */
  readonly ones?: readonly string[];
}

export const noForeignFacts: ForeignFacts = { conditions: [], settings: [], readings: [], faults: [] };

/** The names among those that a file knows that it did not declare itself: it need not use them. */
export interface ForeignNames {
  readonly settings: ReadonlySet<string>;
  readonly readings: ReadonlySet<string>;
  readonly faults: ReadonlySet<string>;
}
