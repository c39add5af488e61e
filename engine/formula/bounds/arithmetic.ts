import Fraction from 'fraction.js';
import { type Bounds, type End, holds, needing } from './bounds.ts';

const zero = new Fraction(0);

const flip = (end: End | null): End | null => end && { value: end.value.neg(), closed: end.closed };

export const negated = (a: Bounds): Bounds => ({ ...a, low: flip(a.high), high: flip(a.low) });

const plus = (a: End | null, b: End | null): End | null =>
  a && b && { value: a.value.add(b.value), closed: a.closed && b.closed };

export const added = (a: Bounds, b: Bounds): Bounds => ({
  low: plus(a.low, b.low),
  high: plus(a.high, b.high),
  ...needing([a, b]),
});

export const subtracted = (a: Bounds, b: Bounds): Bounds => added(a, negated(b));

/** An end of an interval, with the ends at infinity. */
type Corner = End | 'below' | 'above';

const corners = ({ low, high }: Bounds): readonly [Corner, Corner] => [low ?? 'below', high ?? 'above'];

/** The extremes of a product lie at the corners of the two intervals. */
export function multiplied(a: Bounds, b: Bounds): Bounds {
  const products = corners(a).flatMap((x) => corners(b).map((y) => product(x, y)));
  return { low: lowest(products), high: highest(products), ...needing([a, b]) };
}

/** Nothing times anything is nothing, and is reached with the end that is zero, whatever the other one is. */
function product(a: Corner, b: Corner): Corner {
  for (const [one, other] of [
    [a, b],
    [b, a],
  ] as const) {
    if (typeof one === 'string' || one.value.n !== 0n) continue;
    const twice = typeof other !== 'string' && other.value.n === 0n && other.closed;
    return { value: zero, closed: one.closed || twice };
  }
  if (typeof a !== 'string' && typeof b !== 'string') {
    return { value: a.value.mul(b.value), closed: a.closed && b.closed };
  }
  return isNegative(a) === isNegative(b) ? 'above' : 'below';
}

const isNegative = (corner: Corner): boolean =>
  typeof corner === 'string' ? corner === 'below' : corner.value.lt(0);

export function lowest(ends: readonly Corner[]): End | null {
  if (ends.includes('below')) return null;
  const real = ends.filter((end) => typeof end !== 'string');
  return real.reduce<End | null>((sofar, end) => {
    const order = sofar === null ? -1 : end.value.compare(sofar.value);
    return order < 0 || (order === 0 && end.closed) ? end : sofar;
  }, null);
}

export function highest(ends: readonly Corner[]): End | null {
  return flip(
    lowest(
      ends.map((end) =>
        end === 'above'
          ? 'below'
          : end === 'below'
            ? 'above'
            : { value: end.value.neg(), closed: end.closed },
      ),
    ),
  );
}

/** By an interval with zero in its midst the quotient can be anything, or nothing. */
export function divided(a: Bounds, b: Bounds): Bounds {
  const known = needing([a, b]);
  const isZero = b.low !== null && b.high !== null && b.low.value.n === 0n && b.high.value.n === 0n;
  if (isZero) return { low: null, high: null, ...known, value: 'none' };
  if (holds(b, zero)) {
    return { ...halves(a, b), ...known, value: known.value === 'none' ? 'none' : 'perhaps' };
  }
  return { ...multiplied(a, inverse(b)), ...known };
}

/** Dividing by an interval that zero is an end of keeps to one side. */
function halves(a: Bounds, b: Bounds): Pick<Bounds, 'low' | 'high'> {
  const touches = (end: End | null): boolean => end !== null && end.value.n === 0n;
  const open = { value: zero, closed: false };
  if (touches(b.low)) return multiplied(a, inverse({ ...b, low: open }));
  if (touches(b.high)) return multiplied(a, inverse({ ...b, high: open }));
  return { low: null, high: null };
}

/** Of an interval on one side of zero. */
function inverse({ low, high, ...known }: Bounds): Bounds {
  const over = (end: End | null): End | null => {
    if (end === null) return { value: zero, closed: false };
    return end.value.n === 0n ? null : { value: end.value.inverse(), closed: end.closed };
  };
  return { low: over(high), high: over(low), ...known };
}
