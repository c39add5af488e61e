import type { UsedLimits } from '../model/observation.ts';
import type { ResolvedScale } from '../model/resolved-scale.ts';

/** The limits as they stood when a value was judged; null where there are none or not all are known. */
export function usedLimits({ bands, limits, twin, contradiction }: ResolvedScale): UsedLimits | null {
  if (limits.length === 0 || contradiction !== null) return null;
  return limits.every((limit) => limit !== null) ? { bands, limits, twin } : null;
}
