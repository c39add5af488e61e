import type { Part } from './entry.ts';
import type { Mark } from './observation.ts';

export type Verdict = 'normal' | 'wrong' | 'open' | 'not judged' | 'not read';

/** One reading as the record prints it. */
export interface RecordReading {
  /** Entry number, counted from 1. */
  readonly entry: number;
  readonly at: string;
  readonly section: string;
  readonly reading: string;
  readonly is: string;
  readonly typed: string;
  /** As understood: `25.2 MHz`. */
  readonly value: string;
  readonly bands: readonly string[];
  readonly verdict: Verdict;
  /** What it should have shown then: `39.6 MHz .. 40.4 MHz`. */
  readonly expected: string;
  readonly mark: Mark | null;
  /** Why it does not count: struck out, corrected, the board was altered since. */
  readonly aside: string | null;
}

export interface RecordRemedy {
  readonly at: string;
  readonly fault: string;
  readonly is: string;
  readonly which: string;
  readonly parts: readonly Part[];
  readonly effect: 'waits for proof' | 'mended' | 'more is wrong' | 'no effect';
}

/** The report on one job: what came in, what was found, what was done, what proves it. */
export interface JobRecord {
  readonly format: 1;
  readonly kind: 'record';
  readonly job: string;
  readonly board: string;
  readonly owner: string;
  /** The fault in the owner's words. */
  readonly story: string;
  readonly tree: {
    readonly id: string;
    readonly title: string;
    readonly symptom: string;
    readonly digest: string;
  };
  readonly opened: string;
  readonly closed: string | null;
  readonly outcome: 'mended' | 'not mended' | 'open';
  /** Said to the owner at closing. */
  readonly closing: string;
  readonly settings: readonly { readonly id: string; readonly is: string; readonly value: string }[];
  readonly readings: readonly RecordReading[];
  readonly remedies: readonly RecordRemedy[];
  /** The readings that prove the last remedy; empty until they are complete. */
  readonly proof: readonly RecordReading[];
  readonly ruledOut: readonly { readonly fault: string; readonly is: string; readonly by: string }[];
  readonly openWork: readonly { readonly at: string; readonly text: string }[];
  readonly notes: readonly { readonly at: string; readonly text: string }[];
}
