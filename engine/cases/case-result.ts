import type { Section } from '../model/section.ts';

/** What went wrong with a case. */
export type CaseProblem =
  /** An answer was not taken. Steps count from 1. */
  | { readonly kind: 'refused'; readonly step: number; readonly answer: string; readonly why: string }
  /** The answers are used up, and the walk stands elsewhere. */
  | {
      readonly kind: 'elsewhere';
      readonly expected: string;
      readonly stands: string;
      /** What the step waits for: a reading's id, or nothing. */
      readonly asks: string | null;
      readonly parted: Parting | null;
    };

/** Where a walk left every way to the section it should have led to. */
export interface Parting {
  /** The last section from which the expected one could still be reached. */
  readonly section: string;
  /** Where it went from there instead; null where it went nowhere. */
  readonly next: string | null;
}

/** How one case went. */
export interface CaseResult {
  readonly title: string;
  /** The sections walked, first to last. */
  readonly path: readonly Section[];
  /** Null: it led where it must. */
  readonly problem: CaseProblem | null;
}
