import { bandsUnder, doubtOf } from '../doubt/index.ts';
import type { DecisionRule, Equipment } from '../model/instrument.ts';
import type { Doubt, Understood } from '../model/observation.ts';
import type { Reading } from '../model/reading.ts';
import type { ResolvedScale } from '../model/resolved-scale.ts';
import { judge } from './judge.ts';

interface Judged {
  readonly bands: readonly string[];
  readonly doubt: Doubt | null;
}

/** The bands of one value, its doubt minded. */
export function judgeOne(
  reading: Reading,
  resolved: ResolvedScale,
  { understood, none }: { readonly understood: Understood; readonly none: boolean },
  equipment: Equipment,
): Judged {
  const shown = judge(reading, resolved, understood);
  // Whoever types the band's own name means that band, even where a limit beside it is not known.
  if (none && shown.includes('none')) return { bands: ['none'], doubt: null };
  const doubt =
    understood.kind === 'quantity' ? doubtOf(reading, resolved, understood.quantity, equipment) : null;
  return withDoubt(resolved, shown, doubt, equipment.rule);
}

export const withDoubt = (
  { bands }: ResolvedScale,
  shown: readonly string[],
  doubt: Doubt | null,
  rule: DecisionRule,
): Judged => ({ bands: bandsUnder(rule, shown, doubt, bands), doubt });
