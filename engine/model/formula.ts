import type { Exact } from './exact.ts';

/** An expression over quantities and settings, as plain data. */
export type Formula =
  | { readonly kind: 'quantity'; readonly value: Exact; readonly unit: string }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'negate'; readonly of: Formula }
  | {
      readonly kind: 'binary';
      readonly operator: '+' | '-' | '*' | '/';
      readonly left: Formula;
      readonly right: Formula;
    }
  /** True or false: `cpu_clk > bus * 1.2`. Stands at the top of a derived reading only. */
  | {
      readonly kind: 'compare';
      readonly operator: '<' | '>' | '<=' | '>=';
      readonly left: Formula;
      readonly right: Formula;
    }
  | { readonly kind: 'call'; readonly name: string; readonly arguments: readonly Formula[] };
