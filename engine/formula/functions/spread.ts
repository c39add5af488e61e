import type { FunctionRow } from './function-row.ts';
import { max } from './max.ts';
import { median } from './median.ts';
import { min } from './min.ts';
import { ratios } from './ratios.ts';

/** How far several ratios lie apart, as a share of their median. */
export const spread: FunctionRow = {
  arity: { least: 2, most: 16 },
  leavesOut: true,
  dimension: ratios,
  evaluate: (args) => {
    const middle = median(args);
    if (middle === null || middle.n === 0n) return null;
    return (
      max
        .evaluate(args)
        ?.sub(min.evaluate(args) ?? middle)
        .div(middle) ?? null
    );
  },
};
