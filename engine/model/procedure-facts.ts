import type { BoardCondition } from './compiled-tree.ts';
import type { StoredQuantity } from './exact.ts';
import type { ForeignNames } from './foreign-facts.ts';
import type { Reading } from './reading.ts';
import type { Setting } from './setting.ts';

/** What a procedure is given by its caller. */
export type Parameter =
  /** A reading of the caller's, which must have at least these bands; in `unit` where the procedure computes with it. */
  | {
      readonly kind: 'reading';
      readonly id: string;
      readonly is: string;
      readonly bands: readonly string[];
      readonly unit: string | null;
    }
  | {
      readonly kind: 'quantity';
      readonly id: string;
      readonly is: string;
      readonly unit: string;
      readonly usual: StoredQuantity | null;
    };

/** A way out of a procedure. */
export interface ProcedureEnd {
  readonly id: string;
  readonly means: string | null;
}

/** What the front-matter of a procedure declares, and what it knows from other files: those first. */
export interface ProcedureFacts {
  readonly title: string;
  readonly minutes: number;
  readonly takes: readonly Parameter[];
  readonly ends: readonly ProcedureEnd[];
  readonly conditions: readonly BoardCondition[];
  readonly settings: readonly Setting[];
  readonly readings: readonly Reading[];
  readonly foreign: ForeignNames;
}
