import type { Dice } from './dice.ts';

/** Where a value may lie, in the base unit; null where it is open. */
export interface Room {
  readonly low: number | null;
  readonly high: number | null;
  /** What it should be, if that lies here. */
  readonly around: number | null;
  /** Nothing is there: as near to zero as the room allows. */
  readonly dark: boolean;
}

/** Values stay this part of a band's width away from its limits, so that a usual instrument tells them apart … */
const margin = 0.1;
/** … but for one in so many, which may lie anywhere in its band. */
const anywhere = 12;

/** A value that a board could well show: near what it should be, evenly over a narrow band, evenly by its logarithm over one that
 *  spans decades, and not far beyond the limit where a band is open. */
export function sizeIn({ low, high, around, dark }: Room, dice: Dice): number {
  const [where, how] = [dice.share(), dice.share()];
  if (low !== null && high !== null) {
    const edge = dice.below(anywhere) === 0 ? 0.001 : margin;
    const part = edge + (1 - 2 * edge) * where;
    if (around !== null) return between(around, low, high, where, 0.6);
    if (dark && low >= 0) return low + (high - low) * 0.1 * part;
    return low > 0 && high / low > 4 ? low * (high / low) ** part : low + (high - low) * part;
  }
  if (around !== null) {
    const far = low ?? high ?? around;
    const width = Math.min(Math.abs(around - far), Math.abs(around) * 0.15) * 0.7;
    return around + (2 * where - 1) * width;
  }
  if (high !== null) return dark ? high * 0.08 * where : below(high, where, how);
  if (low !== null) return above(low, where);
  return 0.8 + where;
}

/** Symmetric about `around`, up to a part of the way to the nearer limit. */
function between(around: number, low: number, high: number, where: number, part: number): number {
  const width = Math.min(around - low, high - around) * part;
  return around + (2 * where - 1) * width;
}

/** Most often not much too low, sometimes hardly anything. */
function below(high: number, where: number, how: number): number {
  if (high <= 0) return high - Math.max(Math.abs(high), 0.1) * (0.03 + 0.3 * where);
  return how < 0.7 ? high * (0.7 + 0.27 * where) : high * (0.1 + 0.6 * where);
}

function above(low: number, where: number): number {
  if (low > 0) return low * (1.06 + 0.6 * where);
  // A negative rail that is too small by magnitude.
  return low === 0 ? 0.1 + where : low * (0.95 - 0.5 * where);
}
