import Fraction from 'fraction.js';
import type { Bounds } from '../formula/index.ts';
import type { ResolvedScale } from '../model/resolved-scale.ts';
import { bandsBetween } from './bands-between.ts';

const no = new Fraction(0);
const yes = new Fraction(1);

/** What a comparison can come out as. */
export function yesOrNo({ low, high, value }: Bounds): readonly string[] {
  if (value !== 'sure') return ['yes', 'no'];
  if (low?.value.equals(yes)) return ['yes'];
  return high?.value.equals(no) ? ['no'] : ['yes', 'no'];
}

/** The bands that a computed value can be in; any where it perhaps has no value. */
export const derivedBands = ({ low, high, value }: Bounds, resolved: ResolvedScale): readonly string[] =>
  value === 'sure' ? bandsBetween(low, high, resolved) : resolved.bands;
