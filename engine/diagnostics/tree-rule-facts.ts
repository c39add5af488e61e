/** One band of each name: an example of what a check meets. */
export type Example = readonly { readonly name: string; readonly band: string }[];

/** Problems of a tree as a whole. */
export type TreeRuleFacts =
  /** A file of another kind: procedure, board, case. */
  | { readonly code: 'not-a-tree'; readonly kind: string }
  | { readonly code: 'no-sections' }
  | { readonly code: 'uncovered-combination'; readonly example: Example; readonly combinations: number }
  | { readonly code: 'too-many-combinations'; readonly title: string }
  | { readonly code: 'outcome-never-matches'; readonly written: string }
  | { readonly code: 'unreachable-section'; readonly title: string }
  | { readonly code: 'no-way-on'; readonly titles: readonly string[] }
  /** A loop of tasks and calls only. */
  | { readonly code: 'loop-without-reading'; readonly titles: readonly string[] }
  | { readonly code: 'fault-without-section'; readonly fault: string }
  | { readonly code: 'fault-with-two-sections'; readonly fault: string; readonly first: string }
  /** `brought` is declared in another file. */
  | { readonly code: 'brought-without-section'; readonly fault: string; readonly brought: string }
  | { readonly code: 'end-without-proof'; readonly title: string }
  | { readonly code: 'unused-reading'; readonly reading: string }
  | { readonly code: 'unused-setting'; readonly setting: string }
  | {
      readonly code: 'symptom-not-shown';
      readonly fault: string;
      readonly reading: string;
      readonly band: string;
    };
