import type Fraction from 'fraction.js';

/** The middle one; of an even number, the mean of the two in the middle. Null where fewer than two are left to compare. */
export function median(values: readonly Fraction[]): Fraction | null {
  const order = values.toSorted((a, b) => a.compare(b));
  const upper = order[Math.floor(order.length / 2)];
  const lower = order[Math.floor((order.length - 1) / 2)];
  return upper === undefined || lower === undefined || order.length < 2 ? null : upper.add(lower).div(2);
}
