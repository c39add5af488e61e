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
}

export const noForeignFacts: ForeignFacts = { conditions: [], settings: [], readings: [], faults: [] };
