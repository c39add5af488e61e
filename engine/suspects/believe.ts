import type { Belief } from './belief.ts';
import type { BeliefOptions } from './belief-options.ts';
import { logsOf } from './logs-of.ts';
import { piecesOf } from './pieces.ts';
import type { Sighting } from './sighting.ts';
import { suspectedIn } from './suspected.ts';
import { WeighedBelief } from './weighed-belief.ts';
import { type BeliefTree, weighingOf } from './weighing.ts';

export type { BeliefOptions, BeliefTree };

/**
 * What is believed of a board after some sightings: Bayes over every fault alone, two at once where asked for, and none of these.
 *
 *      share(hypothesis) ∝ prior · P(all that was seen | hypothesis)
 *
 * Under a hypothesis the board's bands are drawn once, as `drawsOf` draws them: what is `like` another reading comes out like it,
 * what needs something that is broken is hidden. Each sighting then slips for itself, with the tree's `slip` over all bands alike. The same
 * draw stands behind every sighting of a reading, before a remedy and after it. What is computed is judged beside what its inputs
 * were read as (`restricted`). Where nothing that can be has been seen (only without slips), the priors stand.
 */
export function believe(
  tree: BeliefTree,
  sightings: readonly Sighting[],
  options: BeliefOptions = {},
): Belief {
  const weighing = weighingOf(tree, options.settings);
  const suspected = suspectedIn(weighing, options);
  const logs = logsOf(weighing, suspected, piecesOf(weighing, sightings));
  return new WeighedBelief(weighing, suspected, sightings, logs);
}
