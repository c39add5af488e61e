import { alike } from './alike.ts';
import type { FunctionRow } from './function-row.ts';

export const max: FunctionRow = {
  arity: { least: 1, most: 16 },
  leavesOut: false,
  dimension: alike,
  evaluate: (args) => args.reduce((most, next) => (next.gt(most) ? next : most)),
};
