import type { Drill } from '../../practice/index.ts';

/** A drill at a terminal. */
export interface DrillDesk {
  readonly drill: Drill;
  /** The reading whose warnings were just shown; null where none waits. */
  readonly waiting: string | null;
}

/** What became of a line: the desk after it, and what is said. */
export interface Told {
  readonly desk: DrillDesk;
  readonly text: string;
  /** False: it was not understood, or cannot be done. */
  readonly ok: boolean;
}

export const told = (desk: DrillDesk, text: string): Told => ({ desk, text, ok: true });
export const refused = (desk: DrillDesk, text: string): Told => ({ desk, text, ok: false });
