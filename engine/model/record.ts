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
  /** How far off the instrument may have been, and what that makes of the verdict; null where no instrument is known. */
  readonly doubt: RecordDoubt | null;
  /** The known-good board's value that a limit rested on, and where it is from: `1.3 Vpp, read in this job`. */
  readonly twin: string | null;
  /** Why it does not count: struck out, corrected, the board was altered since. */
  readonly aside: string | null;
}

export interface RecordDoubt {
  readonly instrument: string;
  /** `± 17.75 mV` */
  readonly plusMinus: string;
  /** By ILAC-G8:09/2019, guard band w = U; null where there is nothing to conform to. */
  readonly verdict: 'pass' | 'conditional pass' | 'conditional fail' | 'fail' | null;
  /** That the true value is normal, from 0 to 1 (JCGM 106); null likewise. */
  readonly probability: number | null;
}

/** A tree that the job was walked with. */
export interface RecordTree {
  readonly id: string;
  readonly title: string;
  readonly symptom: string;
  readonly digest: string;
}

export interface RecordRemedy {
  readonly at: string;
  readonly fault: string;
  readonly is: string;
  readonly which: string;
  readonly parts: readonly Part[];
  readonly effect: 'waits for proof' | 'mended' | 'more is wrong' | 'no effect';
}

export interface RecordSuspects {
  /** False: the readings fit no fault of the tree. */
  readonly fits: boolean;
  readonly ranked: readonly {
    /** None where it is none of the tree's faults. */
    readonly faults: readonly string[];
    readonly is: string;
    /** 0..1 */
    readonly share: number;
    /** The readings that moved it most: `Reference swing weak ×9; 5 V good ×0.98`. */
    readonly moved: string;
  }[];
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
  /** The tree it was begun with. */
  readonly tree: RecordTree;
  /** Trees it went on with, and why. */
  readonly laterTrees: readonly (RecordTree & {
    readonly at: string;
    readonly why: 'handed over' | 'newer';
  })[];
  /** The board sheet; null without one. */
  readonly sheet: { readonly id: string; readonly title: string; readonly digest: string } | null;
  /** What was at the bench; null where nobody said. */
  readonly bench: {
    /** One line each, as they are typed. */
    readonly instruments: readonly string[];
    readonly lacking: readonly string[];
    readonly rule: 'simple' | 'guarded';
  } | null;
  readonly opened: string;
  readonly closed: string | null;
  readonly outcome: 'mended' | 'not mended' | 'open';
  /** Said to the owner at closing. */
  readonly closing: string;
  readonly settings: readonly { readonly id: string; readonly is: string; readonly value: string }[];
  readonly readings: readonly RecordReading[];
  /** What the readings say together: derived readings out of normal. */
  readonly findings: readonly { readonly reading: string; readonly is: string; readonly text: string }[];
  /** What was done although something that must be seen first was not, and why. */
  readonly overrides: readonly { readonly at: string; readonly what: string; readonly why: string }[];
  /** What happened to the board besides readings: conditions, jumpers, that it ran all of a sudden. */
  readonly events: readonly { readonly at: string; readonly text: string }[];
  /** Titles of the sections walked to where the job stands. */
  readonly path: readonly string[];
  readonly remedies: readonly RecordRemedy[];
  /** The readings that prove the last remedy; empty until they are complete. */
  readonly proof: readonly RecordReading[];
  readonly ruledOut: readonly { readonly fault: string; readonly is: string; readonly by: string }[];
  /** What the board is suspected of, likeliest first; null where a fault was proved. */
  readonly suspects: RecordSuspects | null;
  readonly openWork: readonly { readonly at: string; readonly text: string }[];
  readonly notes: readonly { readonly at: string; readonly text: string }[];
}
