import type { CompiledBoard } from '../model/compiled-board.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';

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
}

/** One thing a trainee did. `minute` counts bench minutes as the tree gives them, from 0. */
export type DrillEvent =
  /** `heeded`: the warnings that stand before it were acknowledged. */
  | {
      readonly kind: 'measured';
      readonly reading: string;
      readonly typed: string;
      readonly heeded: boolean;
    }
  /** The board was brought into other conditions. */
  | { readonly kind: 'arranged'; readonly conditions: Readonly<Record<string, string>> }
  /** The trainee said before what it would show. */
  | { readonly kind: 'predicted'; readonly reading: string; readonly band: string }
  | { readonly kind: 'hinted'; readonly hint: string }
  /** A remedy was carried out for this fault; `unlisted` for none of the tree's. */
  | { readonly kind: 'named'; readonly fault: string; readonly right: boolean }
  | { readonly kind: 'gave-up' };

/** A drill up to its last event. A value: every step makes a new one. */
export interface Drill {
  readonly plan: DrillPlan;
  readonly tree: CompiledTree;
  readonly board: CompiledBoard | null;
  readonly events: readonly (DrillEvent & { readonly minute: number })[];
  /** Bench minutes spent so far, hints included. */
  readonly minutes: number;
  readonly conditions: Readonly<Record<string, string>>;
  readonly state: 'running' | 'found' | 'gave up';
}
