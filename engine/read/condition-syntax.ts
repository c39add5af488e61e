import type { Named } from './named.ts';

/** A condition as it is written, names not yet looked up. */
export type ConditionSyntax =
  | { readonly kind: 'otherwise' }
  | { readonly kind: 'unread' }
  /** All of these hold at once. */
  | { readonly kind: 'clauses'; readonly clauses: readonly ClauseSyntax[] };

export type ClauseSyntax =
  | { readonly kind: 'all-good'; readonly from: number; readonly to: number }
  /** `any lines are stuck`, `all lines are good`: how many of many alike. */
  | {
      readonly kind: 'members';
      readonly quantifier: 'any' | 'all' | 'one' | 'several';
      readonly name: Named;
      readonly bands: readonly Named[];
    }
  /** `name` is null for a bare band: it speaks of the only reading of the check. */
  | {
      readonly kind: 'bands';
      readonly name: Named | null;
      readonly not: boolean;
      readonly bands: readonly Named[];
    };
