import type { Belief, Hypothesis } from './belief.ts';
import { predictionOf, type SeenSoFar, seenSoFar } from './prediction-of.ts';
import type { Sighting } from './sighting.ts';
import type { Suspected } from './suspected.ts';
import type { Weighing } from './weighing.ts';

/** A belief with all that it rests on. */
export class WeighedBelief implements Belief {
  readonly weighing: Weighing;
  readonly suspected: Suspected;
  readonly sightings: readonly Sighting[];
  /** The natural logarithm of how likely the sightings are under each hypothesis. */
  readonly logs: Float64Array;
  readonly shares: readonly number[];
  #seen: SeenSoFar | null = null;

  constructor(weighing: Weighing, suspected: Suspected, sightings: readonly Sighting[], logs: Float64Array) {
    this.weighing = weighing;
    this.suspected = suspected;
    this.sightings = sightings;
    this.logs = logs;
    this.shares = sharesOf(suspected.priors, logs);
  }

  get hypotheses(): readonly Hypothesis[] {
    return this.suspected.hypotheses;
  }

  /** The same as `predict`, for those who know the reading's place. */
  prediction(hypothesis: number, reading: number): readonly number[] {
    this.#seen ??= seenSoFar(this.weighing, this.sightings);
    return predictionOf(this.#seen, this.suspected.own[hypothesis] ?? [], reading);
  }

  predict(hypothesis: number, reading: string): readonly number[] {
    const place = this.weighing.ground.places.get(reading);
    if (place === undefined) throw new Error(`expected "${reading}" to be a reading of the tree`);
    return this.prediction(hypothesis, place);
  }
}

/** What a belief rests on. Only `believe` and `after` make beliefs. */
export function weighed(belief: Belief): WeighedBelief {
  if (!(belief instanceof WeighedBelief)) throw new Error('expected a belief that was made by believe()');
  return belief;
}

function sharesOf(priors: Float64Array, logs: Float64Array): readonly number[] {
  let most = Number.NEGATIVE_INFINITY;
  const weights = logs.map((log, at) => log + Math.log(priors[at] ?? 0));
  for (const weight of weights) if (weight > most) most = weight;
  if (most === Number.NEGATIVE_INFINITY) return [...priors];
  const parts = weights.map((weight) => Math.exp(weight - most));
  const sum = parts.reduce((all, part) => all + part, 0);
  return Array.from(parts, (part) => part / sum);
}
