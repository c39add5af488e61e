import { alike } from './alike.ts';
import type { FunctionRow } from './function-row.ts';

export const min: FunctionRow = {
  arity: { least: 1, most: 16 },
  leavesOut: false,
  dimension: alike,
  evaluate: (args) => args.reduce((least, next) => (next.lt(least) ? next : least)),
};
