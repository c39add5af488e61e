import type { DecisionRule } from '../model/instrument.ts';
import type { Doubt } from '../model/observation.ts';

/** The bands that a value counts as (JCGM 106): by simple acceptance those of what was shown, guarded all that it can be.
 *  @param shown the bands of the value itself
 *  @param order all bands, in the scale's order */
export function bandsUnder(
  rule: DecisionRule,
  shown: readonly string[],
  doubt: Doubt | null,
  order: readonly string[],
): readonly string[] {
  if (rule === 'simple' || doubt === null || doubt.shares.length < 2) return shown;
  const possible = new Set([...shown, ...doubt.shares.map(({ band }) => band)]);
  return order.filter((band) => possible.has(band));
}
