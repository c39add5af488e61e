import type { Measure } from '../model/reading.ts';
import { bandOfBeeps } from '../scale/band-of-beeps.ts';
import { bandOfCode, otherBand } from '../scale/index.ts';
import type { Dice } from './dice.ts';

type Codes = Extract<Measure, { readonly kind: 'codes' }>;
type Beeps = Extract<Measure, { readonly kind: 'beeps' }>;

/** A code that the table does not list. */
export function strangeCode(measure: Codes, dice: Dice): string {
  const all = 16 ** Math.min(measure.digits, 4);
  const first = dice.below(all);
  for (let step = 0; step < all; step += 1) {
    const text = ((first + step) % all).toString(16).toUpperCase().padStart(measure.digits, '0');
    if (bandOfCode(measure, text) === otherBand) return text;
  }
  return otherBand;
}

/** Beeps that the table does not list. */
export function strangeBeeps(measure: Beeps, dice: Dice): string {
  for (let beeps = 3 + dice.below(3); ; beeps += 1) {
    const pattern = Array.from({ length: beeps }, () => dice.of(['L', 'S'])).join('');
    if (bandOfBeeps(measure, pattern) === otherBand) return pattern;
  }
}
