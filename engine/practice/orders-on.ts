import { propose } from '../next/index.ts';
import { beliefOf } from './belief-of.ts';
import type { Drill } from './drill.ts';
import { enoughAt } from './enough-at.ts';
import { groundOf } from './ground-of.ts';
import { safeChecks } from './hint.ts';
import { measure } from './measure.ts';
import { ledTo, nextOf } from './next-of.ts';
import { startDrill } from './start-drill.ts';

/** Whoever takes more checks than this on one board is lost. */
const longest = 200;

/** The same board, untouched. */
const anew = ({ plan, tree, board, equipment }: Drill, manner: Drill['plan']['manner']): Drill => ({
  ...startDrill({ ...plan, manner }, tree, null, equipment),
  board,
});

/** Minutes, waits apart, that the tree's own order takes on this very board until it comes to a fault; null where it comes to none. */
export function minutesAlong(drill: Drill): number | null {
  let at = anew(drill, 'guided');
  for (let step = 0; step < longest; step += 1) {
    const next = nextOf(at);
    const then = next === null ? at : measure(at, next, { heeded: true });
    if (then === at) return ledTo(at) === null ? null : at.minutes;
    at = then;
  }
  return null;
}

/** A next check that promises less, in bits, is not worth taking. */
const leastBits = 0.02;

/** Minutes, waits apart, that always taking the best next check takes on this very board until the evidence is enough, or nothing
 *  that can be taken tells more. */
export function minutesProposed(drill: Drill): number {
  let at = anew(drill, 'free');
  for (let step = 0; step < longest; step += 1) {
    const belief = beliefOf(at);
    if (enoughAt(belief, at.tree)) break;
    const arranging = { ...groundOf(at).arranging, now: at.conditions };
    const [best] = propose(belief, at.tree, safeChecks(at), { arranging, lookAhead: 3 }).ranked;
    if (best === undefined || best.bits < leastBits) break;
    at = measure(at, best.check.reading.id, { heeded: true });
  }
  return at.minutes;
}
