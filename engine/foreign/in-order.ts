import { describe } from '../diagnostics/describe.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';

export const isError = (diagnostic: Diagnostic): boolean => describe(diagnostic).severity === 'error';

/** Problems in the order of the file. */
export const inOrder = (diagnostics: readonly Diagnostic[]): readonly Diagnostic[] =>
  diagnostics.toSorted((a, b) => a.span.from - b.span.from || a.span.to - b.span.to);
