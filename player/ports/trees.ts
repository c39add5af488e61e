import type { CompiledBoard } from '../../engine/model/compiled-board.ts';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';

/** One row of `trees/index.json`. */
export interface TreeListing {
  readonly id: string;
  readonly title: string;
  readonly symptom: string;
  readonly boards: readonly string[];
  readonly digest: string;
  readonly sections: number;
  readonly readings: number;
  readonly faults: number;
  /** What its readings are taken with. */
  readonly tools: readonly string[];
}

/** One row of `boards/index.json`. */
export interface BoardListing {
  readonly id: string;
  readonly title: string;
  /** Board classes, as trees name them. */
  readonly boards: readonly string[];
  readonly digest: string;
  /** How many readings it knows a place for. */
  readonly points: number;
  readonly jumpers: number;
}

export type Fetched<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly why: string };

/** Where compiled trees and board sheets come from. */
export interface Trees {
  list(): Promise<Fetched<readonly TreeListing[]>>;
  load(id: string): Promise<Fetched<CompiledTree>>;
  boards(): Promise<Fetched<readonly BoardListing[]>>;
  loadBoard(id: string): Promise<Fetched<CompiledBoard>>;
}
