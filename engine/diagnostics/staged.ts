import type { Diagnostic } from './diagnostic.ts';

/** What a stage of the compiler hands on: the best value it can give, and every problem it met. */
export interface Staged<T> {
  readonly value: T;
  readonly diagnostics: readonly Diagnostic[];
}
