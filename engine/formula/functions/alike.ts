import { common, type Dimension, plainNumber } from '../dimension.ts';
import type { Misfit } from './function-row.ts';

/** The rule of functions that compare their arguments: all of one kind, which is the result's too. */
export function alike(args: readonly Dimension[]): Dimension | Misfit {
  let sofar = args[0] ?? plainNumber;
  let from = 0;
  for (const [at, next] of args.entries()) {
    const both = common(sofar, next);
    if (both === null) return { unlike: [from, at] };
    if (both !== sofar) from = at;
    sofar = both;
  }
  return sofar;
}
