import type { FileKind } from '../diagnostics/body-facts.ts';
import type { FileFacts } from '../diagnostics/file-facts.ts';
import type { ForeignFacts } from '../model/foreign-facts.ts';
import { noForeignFacts } from '../model/foreign-facts.ts';
import type { ProcedureEnd } from '../model/procedure-facts.ts';
import type { Instance } from './procedures/instance.ts';

/** Another tree, as far as a link into it must know. */
export interface OtherTreeFound {
  readonly id: string;
  readonly title: string;
  /** Slugs. */
  readonly sections: ReadonlySet<string>;
}

/** Another tree, or why there is none. */
export type OtherTree = OtherTreeFound | { readonly problem: FileFacts };

/** What a file is, and what linking knows of the files beside it. */
export interface Beside {
  readonly kind: FileKind;
  /** In the library. */
  readonly path: string;
  /** A procedure's ways out. */
  readonly ends: readonly ProcedureEnd[];
  /** What it has from others: named freely, and nobody's mistake where it is not used. */
  readonly foreign: ForeignFacts;
  /** The procedures it follows, by calling section; one that cannot be followed is reported and not among them. */
  readonly calls: ReadonlyMap<string, Instance>;
  /** Stands for all files beside it: another, once one of them is another. */
  readonly files: object;
  /** The tree at a path relative to the file at `from`. */
  otherTree(from: string, file: string): OtherTree;
}

/** A tree that stands alone. */
export const alone: Beside = {
  kind: 'tree',
  path: 'tree.md',
  ends: [],
  foreign: noForeignFacts,
  calls: new Map(),
  files: {},
  otherTree: (_from, path) => ({ problem: { code: 'no-file', path, wanted: 'tree', near: [], alone: true } }),
};
