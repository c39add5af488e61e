import type { Because } from '../../engine/scale/index.ts';

/** Clauses for "because …": `bus clock is 66 MHz`. */
export function becauseWords(because: readonly Because[]): readonly string[] {
  return because.filter(({ value }) => value !== null).map(({ is, value }) => `${is} is ${value}`);
}
