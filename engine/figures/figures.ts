import type { Advice, SectionFigures } from './advice/advice-of.ts';
import type { TreeAlong } from './along-tree.ts';
import type { Splitting } from './testability/splitting.ts';
import type { MeanGroup } from './testability/testability-of.ts';
import type { OrderStep } from './tree-order.ts';

/** What can be reckoned of a tree before anybody switches on. Minutes are bench minutes, shares go from 0 to 1. */
export interface Figures {
  readonly kind: 'figures';
  readonly tree: string;
  readonly title: string;
  /** Digest of the tree they are of. */
  readonly digest: string;
  /** Settings they were worked out at; a fault that sets one otherwise has its own. */
  readonly settings: Readonly<Record<string, string>>;
  /** Along the tree as it is written. */
  readonly along: TreeAlong;
  readonly best: BestFigures;
  readonly testability: { readonly taken: TestabilityFigures; readonly declared: TestabilityFigures };
  readonly groups: readonly GroupFigures[];
  readonly sections: readonly SectionFigures[];
  readonly advice: readonly Advice[];
}

/** The best order of the same readings: its expected minutes, waiting included, lie between `low` and `high`. */
export interface BestFigures {
  /** No order takes less. */
  readonly low: number;
  /** The best order that was found takes so much. */
  readonly high: number;
  readonly exact: boolean;
  /** States looked into. */
  readonly looked: number;
  /** The best order found, where the likeliest happens every time. */
  readonly begins: readonly OrderStep[];
  /** Readings that were taken to say nothing of a fault, which makes the best look worse than it may be. */
  readonly silent: readonly { readonly fault: string; readonly readings: readonly string[] }[];
}

export interface TestabilityFigures {
  readonly readings: number;
  readonly detected: number;
  readonly isolated: readonly [number, number, number];
  readonly meanGroup: MeanGroup;
  /** Pairs of faults that can come to be left together, the likeliest first. */
  readonly sometimes: readonly { readonly fault: string; readonly other: string; readonly share: number }[];
}

/** Faults that the tree's readings do not tell apart, whatever they show. */
export interface GroupFigures {
  /** In the order in which to try them: by weight for each minute of the remedy. */
  readonly faults: readonly string[];
  /** Share of all boards. */
  readonly share: number;
  /** Expected minutes of remedies until the right one was tried, in that order. */
  readonly minutes: number;
  /** Where minutes of a remedy are not given, all count alike. */
  readonly minutesKnown: boolean;
  /** None where they share a section: the tree tries them one after the other. */
  readonly splitting: readonly Splitting[];
}
