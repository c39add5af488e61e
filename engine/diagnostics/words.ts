import type { DiagnosticFacts, Severity } from './diagnostic.ts';

/** How one kind of problem is spoken of. Sentence case, strings in quotes, no final full stop. */
export interface Words<Facts extends { readonly code: string }> {
  readonly severity: Severity;
  /** What is wrong. */
  readonly wrong: (facts: Facts) => string;
  /** What to do. */
  readonly mend: (facts: Facts) => string;
}

/** One row per code; a missing row does not compile. */
export type WordTable<Facts extends { readonly code: string }> = {
  readonly [Code in Facts['code']]: Words<Extract<Facts, { readonly code: Code }>>;
};

export type AnyWords = Words<DiagnosticFacts>;
