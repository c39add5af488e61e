import type { Block, Hazard, Inline } from './prose.ts';

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
  /** GitHub's slug of the heading. */
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
  readonly minutes: number;
  readonly wait: number;
  readonly target: string;
}

export interface FaultSection extends SectionBase {
  readonly kind: 'fault';
  /** Tried in this order. */
  readonly remedies: readonly Remedy[];
  /** Readings that must all be normal before the job may be closed as mended. */
  readonly proof: readonly string[];
}

export interface StopSection extends SectionBase {
  readonly kind: 'stop';
  readonly reason: readonly Inline[];
}

/** One second-level heading of a tree with what stands under it. */
export type Section = CheckSection | TaskSection | FaultSection | StopSection;
