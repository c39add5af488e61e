import type { Fault } from '../model/fault.ts';
import type { PassedOver } from './drill.ts';

/** What could be known of the board after an event, whether the trainee saw it or not. */
export interface DebriefStep {
  /** Which event of the drill; −1 for the beginning. */
  readonly event: number;
  readonly minute: number;
  /** In the order of the debrief's hypotheses; they add up to 1. */
  readonly shares: readonly number[];
  /** Suspects with at least 1 %. */
  readonly suspects: number;
  /** How many equally likely ones would be as uncertain: 2 to the power of the bits that are missing. */
  readonly effective: number;
  /** What the event told, in bits: how far it moved the shares (relative entropy of what is believed after it against before). */
  readonly bits: number;
}

/** A prediction beside what came. */
export interface Predicted {
  readonly event: number;
  readonly reading: string;
  readonly said: string;
  /** The bands that were read then. */
  readonly came: readonly string[];
  readonly right: boolean;
}

/** A drill looked back at. */
export interface Debrief {
  /** Null: none that the tree lists. */
  readonly hidden: Fault | null;
  readonly outcome: 'found' | 'gave up' | 'running';
  /** The first fault that was named was the right one. */
  readonly rightAtFirst: boolean;
  /** Ids of the tree's faults in their order, then `unlisted`. */
  readonly hypotheses: readonly { readonly id: string; readonly is: string }[];
  /** The beginning, then every event that told something of the board. */
  readonly steps: readonly DebriefStep[];
  readonly minutes: number;
  readonly waited: number;
  /** Those of `minutes` that were spent until the fault was named for the first time: to be held against the next two. */
  readonly checking: number;
  /** What always taking the best next check takes on this very board until the evidence is enough, or nothing tells more. */
  readonly best: number;
  /** What the tree's own order takes on this very board to a fault; null where it leads to none. */
  readonly along: number | null;
  /** When the evidence was enough to name it, and the minutes of checks after that. */
  readonly enough: { readonly event: number; readonly minute: number; readonly after: number } | null;
  /** Events that measured something and told nothing. */
  readonly idle: readonly number[];
  readonly passed: readonly (PassedOver & { readonly event: number })[];
  /** How much harm was done to the board and its spares. */
  readonly harm: number;
  readonly predictions: readonly Predicted[];
  readonly hints: number;
  /** Faults that were named and were not it. */
  readonly wrong: readonly string[];
}
