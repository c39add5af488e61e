import type { Belief } from '../suspects/belief.ts';
import { believe } from '../suspects/believe.ts';
import type { Drill } from './drill.ts';
import { groundOf } from './ground-of.ts';
import { sightingsIn } from './sightings-in.ts';

/** What can be believed of the board by what was seen of it. Faults whose remedy changed nothing are no suspects any more.
 *  @param upTo so many events of the drill; all of them if not given */
export function beliefOf(drill: Drill, upTo = drill.events.length): Belief {
  const { plan, tree } = drill;
  const aside = drill.events
    .slice(0, upTo)
    .flatMap((event) => (event.kind === 'named' && !event.right ? [event.fault] : []));
  return believe(tree, sightingsIn(drill, upTo), {
    boardClass: plan.boardClass === null ? null : (tree.boards[plan.boardClass] ?? null),
    aside: new Set(aside),
    settings: groundOf(drill).board.present.settings,
  });
}
