import type { End } from '../formula/index.ts';
import type { ResolvedScale } from '../model/resolved-scale.ts';
import { fromStored } from '../quantity/index.ts';

/** The values of one band, from end to end; null where it is open, or where the limit is not known. */
export function bandEnds(
  { bands, limits, owners, contradiction }: ResolvedScale,
  band: string,
): { readonly low: End | null; readonly high: End | null } {
  const at = bands.indexOf(band);
  const end = (limit: number, owner: 'below' | 'above'): End | null => {
    const stored = limits[limit] ?? null;
    return stored && { value: fromStored(stored), closed: owners[limit] === owner };
  };
  if (contradiction !== null) return { low: null, high: null };
  return { low: end(at - 1, 'above'), high: end(at, 'below') };
}
