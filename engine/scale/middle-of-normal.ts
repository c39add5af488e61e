import type { StoredQuantity } from '../model/exact.ts';
import { fromStored, toStored } from '../quantity/index.ts';

/** Widest normal band, as a part of its middle, that still says what a reading should be. */
const narrow = 1 / 10;

/** The middle of the one normal band, where the author gave limits and no exact value; null where the band is open, too
 *  wide to speak of one value, or not the only normal one. */
export function middleOfNormal(
  bands: readonly string[],
  limits: readonly (StoredQuantity | null)[],
  normal: readonly string[],
  unit: string,
): StoredQuantity | null {
  const at = normal.length === 1 ? bands.indexOf(normal[0] ?? '') : -1;
  const low = limits[at - 1];
  const high = limits[at];
  if (!low || !high) return null;
  const width = fromStored(high).sub(fromStored(low));
  const middle = fromStored(high).add(fromStored(low)).div(2);
  return width.abs().compare(middle.abs().mul(narrow)) <= 0 ? toStored(middle, unit) : null;
}
