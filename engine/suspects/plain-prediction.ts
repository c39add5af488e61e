import { bandsShown, placesOf, type Shape } from './shape.ts';
import type { Weighing } from './weighing.ts';

const known = new WeakMap<Weighing, Map<number, Float64Array>>();

/** How likely each band of a reading is under one fault as long as nothing was read that bears on it, slips counted in. Shared:
 *  not to be written to. */
export function plainPrediction(weighing: Weighing, answerer: number, reading: number): Float64Array {
  const ofWeighing = known.get(weighing) ?? new Map<number, Float64Array>();
  known.set(weighing, ofWeighing);
  const key = answerer * weighing.ground.readings.length + reading;
  const before = ofWeighing.get(key);
  if (before !== undefined) return before;
  const shape = weighing.shape(reading);
  const shown = new Float64Array(shape.bands.length);
  weighing
    .answers(answerer)
    .table(reading)
    .forEach((share, place) => {
      if (share > 0) addTo(shown, share, bandsShown(shape, [place]));
    });
  const made = slipped(shown, weighing.odds.slip);
  ofWeighing.set(key, made);
  return made;
}

/** The same under two faults at once. */
export function plainPredictionOfTwo(
  weighing: Weighing,
  [first, second]: readonly [number, number],
  reading: number,
): Float64Array {
  const shape = weighing.shape(reading);
  const both = shownByTwo(shape);
  const places = placesOf(shape);
  const one = weighing.answers(first).table(reading);
  const other = weighing.answers(second).table(reading);
  const shown = new Float64Array(shape.bands.length);
  for (let a = 0; a < places; a++) {
    const share = one[a] ?? 0;
    if (share === 0) continue;
    for (let b = 0; b < places; b++) {
      const bands = both[a * places + b];
      const weight = share * (other[b] ?? 0);
      if (weight > 0 && bands !== undefined) addTo(shown, weight, bands);
    }
  }
  return slipped(shown, weighing.odds.slip);
}

const pairsShown = new WeakMap<Shape, readonly Float64Array[]>();

function shownByTwo(shape: Shape): readonly Float64Array[] {
  const before = pairsShown.get(shape);
  if (before !== undefined) return before;
  const places = placesOf(shape);
  const made = Array.from({ length: places * places }, (_, cell) =>
    bandsShown(shape, [Math.floor(cell / places), cell % places]),
  );
  pairsShown.set(shape, made);
  return made;
}

export function addTo(sum: Float64Array, share: number, bands: Float64Array): void {
  for (let band = 0; band < sum.length; band++) sum[band] = (sum[band] ?? 0) + share * (bands[band] ?? 0);
}

const slipped = (shown: Float64Array, slip: number): Float64Array =>
  shown.map((share) => (1 - slip) * share + slip / shown.length);
