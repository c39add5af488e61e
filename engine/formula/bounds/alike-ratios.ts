import Fraction from 'fraction.js';
import { divided } from './arithmetic.ts';
import { anything, type Bounds, type End, holds, noValue } from './bounds.ts';
import { higherOf, lowerOf } from './extremes.ts';

const zero = new Fraction(0);

/** The ratios that count, and those that perhaps do: what is zero, shows nothing or was not taken is left out. */
interface Counting {
  readonly sure: readonly Bounds[];
  readonly perhaps: readonly Bounds[];
}

function counting(ratios: readonly Bounds[]): Counting {
  const sure: Bounds[] = [];
  const perhaps: Bounds[] = [];
  for (const ratio of ratios) {
    const isZero = ratio.low?.value.n === 0n && ratio.high?.value.n === 0n;
    if (ratio.value === 'none' || ratio.dark === 'yes' || isZero) continue;
    const doubtful = ratio.value === 'perhaps' || ratio.dark === 'perhaps' || holds(ratio, zero);
    (doubtful ? perhaps : sure).push(ratio);
  }
  return { sure, perhaps };
}

const fewest = 2;

/** The ratio that several readings have in common: the median of those that count. */
export function factorBounds(ratios: readonly Bounds[]): Bounds {
  const { sure, perhaps } = counting(ratios);
  const all = [...sure, ...perhaps];
  if (all.length < fewest) return noValue;
  if (sure.length < fewest) return anything;
  return { ...medianBounds(sure, perhaps), value: 'sure', dark: 'no' };
}

/** How far they lie apart: the widest distance, as a part of the median. */
export function spreadBounds(ratios: readonly Bounds[]): Bounds {
  const { sure, perhaps } = counting(ratios);
  const all = [...sure, ...perhaps];
  if (all.length < fewest) return noValue;
  if (sure.length < fewest) return anything;
  const median = { ...medianBounds(sure, perhaps), value: 'sure', dark: 'no' } as const;
  const distance = { low: closest(sure), high: furthest(all), value: 'sure', dark: 'no' } as const;
  return divided(distance, median);
}

type Range = Pick<Bounds, 'low' | 'high'>;

/** With as many of the doubtful ones as make it lowest, and highest. A median grows with each of its values. */
function medianBounds(sure: readonly Bounds[], perhaps: readonly Bounds[]): Range {
  const lows = perhaps.map(({ low }) => low).sort(byLow);
  const highs = perhaps.map(({ high }) => high).sort(byHigh);
  let low: End | null | undefined;
  let high: End | null | undefined;
  for (let more = 0; more <= perhaps.length; more += 1) {
    const below = median([...sure.map((one) => one.low), ...lows.slice(0, more)].sort(byLow));
    const above = median([...sure.map((one) => one.high), ...highs.slice(lows.length - more)].sort(byHigh));
    low = low === undefined ? below : lowerOf(low, below);
    high = high === undefined ? above : higherOf(high, above);
  }
  return { low: low ?? null, high: high ?? null };
}

/** Low ends in order; an open one begins just above its value. */
function byLow(a: End | null, b: End | null): number {
  if (a === null || b === null) return a === b ? 0 : a === null ? -1 : 1;
  return a.value.compare(b.value) || Number(!a.closed) - Number(!b.closed);
}

/** High ends in order; an open one ends just below its value. */
function byHigh(a: End | null, b: End | null): number {
  if (a === null || b === null) return a === b ? 0 : a === null ? 1 : -1;
  return a.value.compare(b.value) || Number(a.closed) - Number(b.closed);
}

/** The middle one, or between the two middle ones. */
function median(ends: readonly (End | null)[]): End | null {
  const a = ends[(ends.length - 1) >> 1] ?? null;
  const b = ends[ends.length >> 1] ?? null;
  if (a === null || b === null) return null;
  return { value: a.value.add(b.value).div(2), closed: a.closed && b.closed };
}

/** From the lowest low end to the highest high end. */
function furthest(all: readonly Bounds[]): End | null {
  const low = all.map((one) => one.low).sort(byLow)[0] ?? null;
  const high =
    all
      .map((one) => one.high)
      .sort(byHigh)
      .at(-1) ?? null;
  return low && high && { value: high.value.sub(low.value), closed: low.closed && high.closed };
}

/** From the lowest high end to the highest low end, where there is a gap between them. */
function closest(sure: readonly Bounds[]): End {
  const high = sure.map((one) => one.high).sort(byHigh)[0] ?? null;
  const low =
    sure
      .map((one) => one.low)
      .sort(byLow)
      .at(-1) ?? null;
  const gap = high === null || low === null ? zero : low.value.sub(high.value);
  if (gap.compare(0) <= 0 || high === null || low === null) return { value: zero, closed: true };
  return { value: gap, closed: low.closed && high.closed };
}
