import type { Reading } from '../model/reading.ts';

/** A reading that could be taken now, and what that takes. */
export interface Check {
  readonly reading: Reading;
  /** Where to go for it: the section that says how, or the first task that has to be done before; null where none does. */
  readonly section: string | null;
  /** Hands-on minutes, tasks and changes of the board's condition included. */
  readonly minutes: number;
  /** Minutes of waiting besides. */
  readonly wait: number;
  /** What has to be changed first: `{ cards: 'out' }`. */
  readonly changes: Readonly<Record<string, string>>;
  /** All that the board has to be in for it, changed or not; what the reading itself asks for, if not given. */
  readonly wants?: Readonly<Record<string, string>>;
}
