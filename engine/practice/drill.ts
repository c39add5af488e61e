import type { CompiledBoard } from '../model/compiled-board.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import type { BoardState } from '../model/entry.ts';
import type { Equipment } from '../model/instrument.ts';
import type { Check } from '../next/check.ts';

/** `free`: any check in any order. `guided`: the tree says what is next. */
export type DrillManner = 'free' | 'guided';

/** What a drill is made from. The same gives the same board. */
export interface DrillPlan {
  /** The tree's id and the beginning of its digest: another version is another drill. */
  readonly tree: string;
  readonly digest: string;
  /** 0 .. 2^32 − 1: which fault hides there, and every value it shows. */
  readonly seed: number;
  readonly manner: DrillManner;
  /** The boards may hide a fault that the tree does not list. */
  readonly unlisted: boolean;
  /** Which of the tree's board classes it is, counted from 0: faults are drawn by their weight there. */
  readonly boardClass: number | null;
  /** A trainer chose the fault: seeds hide the tree's faults evenly then, so that one can be found for each. */
  readonly chosen: boolean;
  /** Tools that the trainee must do without: places among `toolsIn(tree)`, counted from 0. */
  readonly lacking: readonly number[];
}

/** Something that stands in the way of a check or a remedy, and was not heeded. */
export interface Warning {
  /** `hazard`: a Danger or Warning of the section; `order`: readings to be taken before; `only-if`: what must have been seen
   *  before; `power`: power before the resistance of what it feeds. */
  readonly kind: 'hazard' | 'order' | 'only-if' | 'power';
  /** A sentence without a final full stop. */
  readonly text: string;
}

/** A warning that was passed over, and whether that did damage on this board. */
export interface PassedOver extends Warning {
  readonly harm: boolean;
}

/** One reading of a proof. */
export interface ProofReading {
  readonly reading: string;
  readonly typed: string;
  readonly good: boolean;
}

/** One thing a trainee did. */
export type DrillEvent =
  /** `heeded`: the warnings that stand before it were acknowledged. */
  | {
      readonly kind: 'measured';
      readonly reading: string;
      readonly typed: string;
      readonly heeded: boolean;
      /** What the board did meanwhile; a fault that comes and goes shows nothing while it runs. */
      readonly board: BoardState;
      readonly passed: readonly PassedOver[];
    }
  /** The same reading on a known-good board. */
  | { readonly kind: 'twin'; readonly reading: string; readonly typed: string }
  /** The board was brought into other conditions. */
  | { readonly kind: 'arranged'; readonly conditions: Readonly<Record<string, string>> }
  /** A task of the tree was done on the way to what it asks next. */
  | { readonly kind: 'worked'; readonly section: string }
  /** The trainee said before what it would show. */
  | { readonly kind: 'predicted'; readonly reading: string; readonly band: string }
  | { readonly kind: 'hinted'; readonly hint: string }
  /** A remedy was carried out for this fault; `unlisted` for none of the tree's. */
  | {
      readonly kind: 'named';
      readonly fault: string;
      readonly right: boolean;
      readonly proof: readonly ProofReading[];
      readonly passed: readonly PassedOver[];
    }
  | { readonly kind: 'gave-up' };

/** Bench minutes when it was over, as the tree gives them, from 0; waits are counted apart. */
export type TimedEvent = DrillEvent & { readonly minute: number };

/** A drill up to its last event. A value: every step makes a new one, and it is plain JSON. */
export interface Drill {
  readonly plan: DrillPlan;
  /** With the limits and usual settings of the board's sheet. */
  readonly tree: CompiledTree;
  readonly board: CompiledBoard | null;
  /** What the trainee has at the bench. */
  readonly equipment: Equipment;
  readonly events: readonly TimedEvent[];
  /** Bench minutes spent so far, hints included. */
  readonly minutes: number;
  /** Minutes of waiting besides. */
  readonly waited: number;
  readonly conditions: Readonly<Record<string, string>>;
  readonly state: 'running' | 'found' | 'gave up';
}

/** A check that a trainee can choose. */
export interface DrillCheck extends Check {
  /** What stands before it and was neither seen nor acknowledged yet. */
  readonly warnings: readonly Warning[];
  /** What it showed so far, oldest first. */
  readonly taken: readonly string[];
  /** A tool it asks for that is not there: it cannot be taken. */
  readonly lacks: string | null;
}

/** What a hidden fault is called that the tree does not list. */
export const unlisted = 'unlisted';
