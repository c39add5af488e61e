import type { BoardCondition, Given } from './compiled-tree.ts';
import type { Fault } from './fault.ts';
import type { ForeignNames } from './foreign-facts.ts';
import type { Odds } from './odds.ts';
import type { Reading } from './reading.ts';
import type { Setting } from './setting.ts';

/** What the front-matter of a tree declares, and what it knows from other files: those first. */
export interface TreeFacts {
  readonly title: string;
  readonly symptom: string;
  readonly boards: readonly string[];
  /** Minutes of a reading or task that gives none. */
  readonly minutes: number;
  readonly given: readonly Given[];
  readonly conditions: readonly BoardCondition[];
  readonly settings: readonly Setting[];
  readonly readings: readonly Reading[];
  readonly faults: readonly Fault[];
  /** Where the tree says so; else the usual ones. */
  readonly odds?: Odds;
  readonly foreign: ForeignNames;
  /** The closed list of tools; null where the tree has none. */
  readonly tools: readonly string[] | null;
}
