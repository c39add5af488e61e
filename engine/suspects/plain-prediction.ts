import type { Answers } from './answers.ts';
import { bandsShown, placesOf, type Shape } from './shape.ts';
import type { Weighing } from './weighing.ts';

const known = new WeakMap<Answers, (readonly number[] | undefined)[]>();

/** How likely each band of a reading is under one fault as long as nothing was read that bears on it, slips counted in. */
export function plainPrediction(weighing: Weighing, answerer: number, reading: number): readonly number[] {
  const answers = weighing.answers(answerer);
  const ofAnswers = known.get(answers) ?? [];
  known.set(answers, ofAnswers);
  const before = ofAnswers[reading];
  if (before !== undefined) return before;
  const shape = weighing.shape(reading);
  const shown = new Float64Array(shape.bands.length);
  answers.table(reading).forEach((share, place) => {
    if (share > 0) addTo(shown, share, bandsShown(shape, [place]));
  });
  const made = slipped(shown, weighing.odds.slip);
  ofAnswers[reading] = made;
  return made;
}

/** The same under two faults at once. */
export function plainPredictionOfTwo(
  weighing: Weighing,
  [first, second]: readonly [number, number],
  reading: number,
): readonly number[] {
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

function addTo(sum: Float64Array, share: number, bands: Float64Array): void {
  for (let band = 0; band < sum.length; band++) sum[band] = (sum[band] ?? 0) + share * (bands[band] ?? 0);
}

/** A slip is spread over all bands. */
export const slipped = (shown: Float64Array, slip: number): readonly number[] =>
  Array.from(shown, (share) => (1 - slip) * share + slip / shown.length);
