import { common, type Dimension, plainNumber } from '../dimension.ts';

/** The rule of functions that compare their arguments: all of one kind, which is the result's too. */
export function alike(
  args: readonly Dimension[],
): Dimension | { readonly unlike: readonly [Dimension, Dimension] } {
  let sofar = args[0] ?? plainNumber;
  for (const next of args) {
    const both = common(sofar, next);
    if (both === null) return { unlike: [sofar, next] };
    sofar = both;
  }
  return sofar;
}
