import type { Belief } from './belief.ts';
import { logsOf } from './logs-of.ts';
import { piecesOf } from './pieces.ts';
import { type WeighedBelief, weighed } from './weighed-belief.ts';

/** What one sighting did to a suspect. */
export interface Move {
  readonly reading: string;
  /** The bands that it was seen in. */
  readonly bands: readonly string[];
  /** Natural logarithm of the factor of its odds against all others. */
  readonly logOdds: number;
  /** Index of the job's entry; null where there is none. */
  readonly entry: number | null;
}

/** What each sighting did to the odds of one hypothesis against all others, in the order they were taken, each beside those
 *  before it; together the whole change from the prior. 0 where there is nothing else to suspect.
 *  @param belief of `believe`
 *  @param hypothesis its place in the belief */
export function movesOf(belief: Belief, hypothesis: number): readonly Move[] {
  const known = weighed(belief);
  const odds = stepsOf(known).map((weights) => logOddsOf(weights, hypothesis));
  return known.sightings.map(({ reading, bands, entry }, at) => {
    const change = (odds[at + 1] ?? 0) - (odds[at] ?? 0);
    return {
      reading,
      bands: bands.filter(({ share }) => share > 0).map(({ band }) => band),
      logOdds: Number.isNaN(change) ? 0 : change,
      entry,
    };
  });
}

const steps = new WeakMap<WeighedBelief, readonly Float64Array[]>();

/** The logarithms of all weights before the first sighting, after it, after the second … */
function stepsOf(belief: WeighedBelief): readonly Float64Array[] {
  const before = steps.get(belief);
  if (before !== undefined) return before;
  const { weighing, suspected, sightings, logs } = belief;
  const priors = suspected.priors.map(Math.log);
  const made = [...sightings, null].map((_, count) => {
    const sofar =
      count === sightings.length
        ? logs
        : logsOf(weighing, suspected, piecesOf(weighing, sightings.slice(0, count)));
    return priors.map((prior, at) => prior + (sofar[at] ?? 0));
  });
  steps.set(belief, made);
  return made;
}

function logOddsOf(weights: Float64Array, hypothesis: number): number {
  let most = Number.NEGATIVE_INFINITY;
  weights.forEach((weight, at) => {
    if (at !== hypothesis && weight > most) most = weight;
  });
  let others = 0;
  weights.forEach((weight, at) => {
    if (at !== hypothesis) others += Math.exp(weight - most);
  });
  return (weights[hypothesis] ?? 0) - most - Math.log(others);
}
