import { plainNumber } from '../dimension.ts';
import { alike } from './alike.ts';
import type { FunctionRow } from './function-row.ts';

/** The first as a share of the second, which must be of the same kind. */
export const ratio: FunctionRow = {
  arity: { least: 2, most: 2 },
  leavesOut: false,
  dimension: (args) => {
    const both = alike(args);
    return 'vector' in both ? plainNumber : both;
  },
  evaluate: ([a, b]) => (a && b && b.n !== 0n ? a.div(b) : null),
};
