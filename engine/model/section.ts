import type { Block, Hazard, Inline } from './prose.ts';
import type { Need } from './reading.ts';

/** When an outcome is taken. */
export type Condition =
  /** Every named reading or setting lies in one of its bands. */
  | { readonly kind: 'bands'; readonly bands: Readonly<Record<string, readonly string[]>> }
  | { readonly kind: 'otherwise' }
  /** Something of this check could not be read. */
  | { readonly kind: 'unread' };

/** One line of a check. */
export interface Outcome {
  readonly condition: Condition;
  /** The condition as the author wrote it. */
  readonly written: string;
  /** Section id. */
  readonly target: string;
  readonly remark: readonly Inline[];
}

/** The work that mends one fault of a fault section. */
export interface Remedy {
  readonly fault: string;
  readonly hazards: readonly Hazard[];
  readonly blocks: readonly Block[];
}

interface SectionBase {
  /** GitHub's slug of the heading; inside a call, the caller's id and a dot before it: `find-the-short.halve-it`. */
  readonly id: string;
  readonly title: string;
  readonly hazards: readonly Hazard[];
  readonly blocks: readonly Block[];
}

export interface CheckSection extends SectionBase {
  readonly kind: 'check';
  /** Reading ids, in the order in which they are asked. */
  readonly readings: readonly string[];
  readonly outcomes: readonly Outcome[];
}

export interface TaskSection extends SectionBase {
  readonly kind: 'task';
  readonly task: readonly Inline[];
  /** The conditions that the board is in afterwards: `{ cards: 'out' }`. */
  readonly sets: Readonly<Record<string, string>>;
  /** What must have been seen before it may be done. */
  readonly onlyIf: readonly Need[];
  readonly minutes: number;
  readonly wait: number;
  readonly target: string;
}

export interface FaultSection extends SectionBase {
  readonly kind: 'fault';
  /** What must have been seen before any of its remedies; each fault may ask for more. */
  readonly onlyIf: readonly Need[];
  /** Tried in this order. */
  readonly remedies: readonly Remedy[];
  /** Readings that must all be normal before the job may be closed as mended. */
  readonly proof: readonly string[];
  /** How many tries the proof asks of a reading that counts them. */
  readonly proofTries: Readonly<Record<string, number>>;
}

export interface StopSection extends SectionBase {
  readonly kind: 'stop';
  readonly reason: readonly Inline[];
}

/** A procedure is followed. Its own sections stand in the tree as well, their ids after this one's. */
export interface CallSection extends SectionBase {
  readonly kind: 'call';
  /** The procedure's file without its ending, and its title. */
  readonly procedure: string;
  readonly procedureTitle: string;
  /** The parameters as the author wrote them: `rail` = `v5`. */
  readonly given: readonly { readonly name: string; readonly is: string; readonly value: string }[];
  /** The section that the procedure begins with. */
  readonly first: string;
  /** Where each of the procedure's ends leads, and the remark shown with it. To faults and analysis the call
   *  is a reading of its own id with the ends as its bands. */
  readonly ends: readonly {
    readonly end: string;
    readonly target: string;
    readonly remark: readonly Inline[];
  }[];
}

/** The job goes on in another tree. */
export interface HandOverSection extends SectionBase {
  readonly kind: 'hand-over';
  /** The other tree's file without its ending. */
  readonly tree: string;
}

/** One second-level heading of a tree with what stands under it. */
export type Section = CheckSection | TaskSection | CallSection | FaultSection | StopSection | HandOverSection;
