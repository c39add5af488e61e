import type { Told } from './told-by.ts';

/**
 * The least minutes in which columns can tell `wanted` bits.
 *
 * A column that is taken in a part x of the cases tells g(x) bits at the most: it is told by what it parts, and a rare band
 * stays rare. All together must tell `wanted`, so the minutes are at least
 *
 *      min Σ minutes · x   where   Σ g(x) ≥ wanted,  0 ≤ x ≤ 1
 *
 * and that is at least  rate · wanted − Σ max over x (rate · g(x) − minutes · x)  for every rate in minutes per bit (weak duality). The
 * best rate is looked for in a few steps; a worse one only makes the bound lower.
 */
export function informationBound(wanted: number, told: readonly Told[]): number {
  if (wanted <= 0) return 0;
  let best = 0;
  let low = 0;
  let high = 0;
  for (const { minutes, bits } of told)
    if (bits > 0) high = Math.max(high, (8 * minutes) / Math.min(1, bits));
  let rate = startOf(wanted, told);
  for (let step = 0; step < steps; step += 1) {
    let bound = rate * wanted;
    let sum = 0;
    for (const one of told) {
      const { gain, bits } = gainAt(rate, one);
      bound -= gain;
      sum += bits;
    }
    if (bound > best) best = bound;
    if (sum > wanted) high = rate;
    else low = rate;
    if (high - low < 1e-3 * high) break;
    rate = low === 0 ? rate / 2 : high > 4 * low ? Math.min(2 * rate, (low + high) / 2) : (low + high) / 2;
  }
  return best;
}

const steps = 9;

/** The rate at which the cheapest bits, taken whole, would do. */
function startOf(wanted: number, told: readonly Told[]): number {
  const rated = told
    .filter(({ bits }) => bits > 0)
    .map(({ minutes, bits }) => ({ bits, rate: minutes / bits }))
    .sort((one, other) => one.rate - other.rate);
  let sum = 0;
  for (const { bits, rate } of rated) {
    sum += bits;
    if (sum >= wanted) return Math.max(rate, 1e-6);
  }
  return Math.max(1e-6, rated.at(-1)?.rate ?? 1);
}

/** The most of `rate · g(x) − minutes · x`, and g there. */
function gainAt(rate: number, { minutes, bits, capacity, masses }: Told): { gain: number; bits: number } {
  if (minutes <= 0) return { gain: rate * bits, bits };
  // By its capacity: a straight line up to what it tells at once.
  const line = rate * bits - (minutes * bits) / Math.max(capacity, 1e-12);
  if (line <= 0) return { gain: 0, bits: 0 };
  const parted = partedGain(rate, minutes, masses);
  return parted.gain < line ? parted : { gain: line, bits };
}

/**
 * By what it parts: of the cases in which it is taken no more than `masses[b]` can show band b, and it tells most where the
 * bands are as even as they can be: the rare ones whole, the others at one level v. There g grows by log2(x / v) for each x.
 */
function partedGain(rate: number, minutes: number, masses: Float64Array): { gain: number; bits: number } {
  const ratio = 2 ** (minutes / rate);
  let whole = 0;
  for (let rare = 0; rare < masses.length; rare += 1) {
    const level = masses.length - rare;
    if (ratio >= level && rare === 0) return { gain: 0, bits: 0 };
    const mass = masses[rare] as number;
    // The level at which the slope has come down to minutes / rate, if that is before this band is whole too.
    const v = ratio > level ? whole / (ratio - level) : Number.POSITIVE_INFINITY;
    if (v <= mass || level === 1) return gainWith(rate, minutes, masses, rare, Math.min(v, mass));
    whole += mass;
  }
  return { gain: 0, bits: 0 };
}

function gainWith(
  rate: number,
  minutes: number,
  masses: Float64Array,
  rare: number,
  level: number,
): { gain: number; bits: number } {
  let x = 0;
  for (let at = 0; at < masses.length; at += 1) x += at < rare ? (masses[at] as number) : level;
  let bits = 0;
  for (let at = 0; at < masses.length; at += 1) {
    const mass = at < rare ? (masses[at] as number) : level;
    if (mass > 0) bits -= mass * Math.log2(mass / x);
  }
  return { gain: Math.max(0, rate * bits - minutes * x), bits };
}
