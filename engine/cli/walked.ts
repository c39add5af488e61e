/** One thing that was walked. */
export interface Walked {
  readonly suite: 'cases' | 'faults';
  readonly file: string;
  readonly name: string;
  /** What was tried, where that is worth telling. */
  readonly note: string;
  /** Null: it led where it must. */
  readonly problem: string | null;
  /** Titles, first to last. */
  readonly path: readonly string[];
}
