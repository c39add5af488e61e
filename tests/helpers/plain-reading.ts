import { bareReading } from '../../engine/model/bare-reading.ts';
import type { Reading } from '../../engine/model/reading.ts';

/** A reading that says nothing beyond its measure and its normal bands; spread it to say more. */
export const plainReading = (
  id: string,
  measure: Reading['measure'],
  normal: Reading['normal'],
): Reading => ({
  id,
  is: id,
  ...bareReading,
  measure,
  normal,
  minutes: 1,
});
