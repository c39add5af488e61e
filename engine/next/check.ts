import type { Reading } from '../model/reading.ts';

/** A reading that could be taken now, and what that takes. */
export interface Check {
  readonly reading: Reading;
  /** The section that says how; null where none does. */
  readonly section: string | null;
  /** Hands-on minutes, changes of the board's condition included. */
  readonly minutes: number;
  /** Minutes of waiting besides. */
  readonly wait: number;
  /** What has to be changed first: `{ cards: 'out' }`. */
  readonly changes: Readonly<Record<string, string>>;
}
