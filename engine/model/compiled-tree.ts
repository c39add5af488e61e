import type { Fault } from './fault.ts';
import type { Machine } from './machine.ts';
import type { Odds } from './odds.ts';
import type { Block, Hazard } from './prose.ts';
import type { Reading } from './reading.ts';
import type { Section } from './section.ts';
import type { Setting } from './setting.ts';

/** A band that belongs to the symptom itself. */
export interface Given {
  readonly reading: string;
  readonly band: string;
}

/** A condition of the board: `cards`, which are `in` or `out`. */
export interface BoardCondition {
  readonly id: string;
  readonly values: readonly string[];
}

/** A tree as it is stored, shipped and walked: plain JSON, loaded without the Markdown compiler. */
export interface CompiledTree {
  readonly format: 1;
  readonly kind: 'compiled-tree';
  /** The file's name without its ending. */
  readonly id: string;
  readonly title: string;
  readonly symptom: string;
  readonly boards: readonly string[];
  /** SHA-256 of the canonical machine, readings, settings and faults, prose apart. */
  readonly digest: string;
  readonly given: readonly Given[];
  /** What the board can be in, the first value of each being how it comes to the bench. */
  readonly conditions: readonly BoardCondition[];
  readonly settings: readonly Setting[];
  readonly readings: readonly Reading[];
  readonly faults: readonly Fault[];
  /** Where the tree says so; else the usual ones. */
  readonly odds?: Odds;
  /** What stands above the first section. */
  readonly hazards: readonly Hazard[];
  readonly blocks: readonly Block[];
  readonly sections: readonly Section[];
  readonly machine: Machine;
}
