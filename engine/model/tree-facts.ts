import type { BoardCondition, Given } from './compiled-tree.ts';
import type { Fault } from './fault.ts';
import type { Reading } from './reading.ts';
import type { Setting } from './setting.ts';

/** What the front-matter of a tree declares. */
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
  /** Ids of settings, readings and faults that other files brought along: what is not used of them is nobody's mistake here. */
  readonly foreign?: ReadonlySet<string>;
  /** The closed list of tools, where the file declares one. */
  readonly tools?: readonly string[];
}
