import type { Because } from '../../engine/scale/index.ts';
import { asShown } from '../parts/as-shown.ts';
import { inSentence } from './in-sentence.ts';

/** Clauses for "because …": `bus clock = 66 MHz`. */
export function becauseWords(because: readonly Because[]): readonly string[] {
  return because
    .filter(({ value }) => value !== null)
    .map(({ is, value }) => `${inSentence(is)} = ${asShown(value ?? '')}`);
}
