import { type Bounds, type End, needing } from './bounds.ts';

/** The lower of two ends that nothing below is reached from: of equal ends, the one that is a value. */
export function lowerOf(a: End | null, b: End | null): End | null {
  if (a === null || b === null) return null;
  const order = a.value.compare(b.value);
  return order < 0 || (order === 0 && a.closed) ? a : b;
}

/** The lower of two high ends; of equal ones, the one that is no value. */
function lowerHigh(a: End | null, b: End | null): End | null {
  if (a === null || b === null) return a ?? b;
  const order = a.value.compare(b.value);
  return order < 0 || (order === 0 && !a.closed) ? a : b;
}

export function higherOf(a: End | null, b: End | null): End | null {
  if (a === null || b === null) return null;
  const order = a.value.compare(b.value);
  return order > 0 || (order === 0 && a.closed) ? a : b;
}

function higherLow(a: End | null, b: End | null): End | null {
  if (a === null || b === null) return a ?? b;
  const order = a.value.compare(b.value);
  return order > 0 || (order === 0 && !a.closed) ? a : b;
}

export const least = (args: readonly Bounds[]): Bounds => ({
  low: args.map(({ low }) => low).reduce(lowerOf),
  high: args.map(({ high }) => high).reduce(lowerHigh),
  ...needing(args),
});

export const greatest = (args: readonly Bounds[]): Bounds => ({
  low: args.map(({ low }) => low).reduce(higherLow),
  high: args.map(({ high }) => high).reduce(higherOf),
  ...needing(args),
});
