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
}

export type Fetched<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly why: string };

/** Where compiled trees come from. */
export interface Trees {
  list(): Promise<Fetched<readonly TreeListing[]>>;
  load(id: string): Promise<Fetched<CompiledTree>>;
}
