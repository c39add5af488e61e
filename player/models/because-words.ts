import type { Because } from '../../engine/scale/index.ts';
import { asShown } from '../parts/as-shown.ts';

/** `Bus clock` → `bus clock` inside a sentence; `CPU clock` stays. */
const inSentence = (is: string): string =>
  /^\p{Lu}\p{Ll}/u.test(is) ? `${is.charAt(0).toLowerCase()}${is.slice(1)}` : is;

/** Clauses for "because …": `bus clock = 66 MHz`. */
export function becauseWords(because: readonly Because[]): readonly string[] {
  return because
    .filter(({ value }) => value !== null)
    .map(({ is, value }) => `${inSentence(is)} = ${asShown(value ?? '')}`);
}
