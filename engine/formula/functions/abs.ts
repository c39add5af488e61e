import { alike } from './alike.ts';
import type { FunctionRow } from './function-row.ts';

export const abs: FunctionRow = {
  arity: { least: 1, most: 1 },
  leavesOut: false,
  dimension: alike,
  evaluate: ([value]) => value?.abs() ?? null,
};
