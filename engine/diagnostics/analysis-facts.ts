import type { Example } from './tree-rule-facts.ts';

/** How the walks of a fault end that do not come to it. `at` is the title of the last section. */
export type WrongEnd =
  | { readonly how: 'other-fault' | 'stop' | 'hand-over' | 'nowhere'; readonly at: string }
  | { readonly how: 'round'; readonly loop: readonly string[] }
  | { readonly how: 'only-if'; readonly at: string; readonly reading: string; readonly band: string }
  | {
      readonly how: 'when';
      readonly at: string;
      readonly reading: string;
      readonly condition: string;
      readonly value: string;
    };

interface Misled {
  readonly fault: string;
  readonly end: WrongEnd;
  /** The section where its way parted from the right one, and what decided there. */
  readonly parted: string;
  readonly by: Example;
  /** Titles from the first section to the last. */
  readonly path: readonly string[];
}

/** Problems that only show on walks through the whole tree. */
export type AnalysisFacts =
  | {
      readonly code: 'outcome-never-on-a-walk';
      readonly written: string;
      /** What the walks that come here already know, where one name is enough to see it. */
      readonly known: { readonly name: string; readonly bands: readonly string[] } | null;
    }
  | { readonly code: 'section-never-entered'; readonly title: string }
  | { readonly code: 'fault-unreached'; readonly fault: string; readonly title: string }
  | ({ readonly code: 'fault-misled' } & Misled)
  /** `share` in per cent. */
  | ({ readonly code: 'fault-partly-found'; readonly share: number } & Misled)
  | {
      readonly code: 'condition-not-set';
      readonly reading: string;
      readonly condition: string;
      readonly value: string;
      /** Some task of the tree sets it, though not on the way. */
      readonly elsewhere: boolean;
    }
  | { readonly code: 'power-before-ohms'; readonly reading: string; readonly title: string }
  | {
      readonly code: 'no-way-without-tool';
      readonly tool: string;
      readonly title: string;
      /** How many checks have no way on without it. */
      readonly checks: number;
    };
