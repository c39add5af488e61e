import type { Observation } from '../model/observation.ts';
import type { ResolvedScale } from '../model/resolved-scale.ts';
import { fromStored, storedUnit } from '../quantity/index.ts';

/** A value as a share of what it should be: 0.63 for 25.2 MHz where 40 MHz is wanted. Null where there is no one
 *  value that it should be, or a share of it makes no sense. */
export function fractionOfNominal(
  { understood }: Pick<Observation, 'understood'>,
  resolved: ResolvedScale,
): number | null {
  const { nominal } = resolved;
  if (nominal === null || understood.kind !== 'quantity' || storedUnit(resolved.unit).row.family === '°C')
    return null;
  const wanted = fromStored(nominal);
  return wanted.n === 0n ? null : fromStored(understood.quantity).div(wanted).valueOf();
}
