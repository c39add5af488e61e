import type { FunctionRow } from './function-row.ts';
import { median } from './median.ts';
import { ratios } from './ratios.ts';

/** The ratio that several readings have in common: the median, which one dead output does not move. */
export const factor: FunctionRow = {
  arity: { least: 2, most: 16 },
  leavesOut: true,
  dimension: ratios,
  evaluate: median,
};
