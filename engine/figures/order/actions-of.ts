import type { Ground } from './ground.ts';
import { canBeTaken, flatBand } from './open-columns.ts';
import type { Settings } from './settings.ts';
import { split } from './split.ts';
import { type Action, type State, untaken } from './state.ts';
import type { States } from './states.ts';

/** Everything that can be done in a state: an open column, with what has to be taken before it where that cannot tell anything; and
 *  what has to be taken before an open column and comes out by chance, or belongs into other conditions. */
export function actionsOf(
  ground: Ground,
  state: State,
  states: States,
  settings: Settings,
): readonly Action[] {
  const { open, seen, rows } = state;
  const wanted = new Set<number>();
  const actions: Action[] = [];
  for (const column of open) {
    const before = (ground.before[column] as readonly number[]).filter(
      (earlier) => seen[earlier] === untaken,
    );
    const first = before.find((earlier) => !goesAlong(ground, state, earlier, column));
    if (first === undefined) actions.push(...actionOf(ground, state, [...before, column], states, settings));
    else if (!open.includes(first)) wanted.add(first);
  }
  for (const column of wanted) {
    const before = (ground.before[column] as readonly number[]).filter(
      (earlier) => seen[earlier] === untaken,
    );
    if (before.length === 0 && canBeTaken(ground, rows, seen, column))
      actions.push(...actionOf(ground, state, [column], states, settings));
    else for (const earlier of before) wanted.add(earlier);
  }
  return cheapestAlone(actions);
}

/** What takes no time is done at once: to know more never costs. */
function cheapestAlone(actions: readonly Action[]): readonly Action[] {
  const free = actions.find(({ minutes, columns }) => minutes === 0 && columns.length === 1);
  return free === undefined ? actions : [free];
}

/** Whether it can as well be taken right before `column`: it comes out the same on all boards left, in the same conditions. */
const goesAlong = (ground: Ground, { rows }: State, earlier: number, column: number): boolean =>
  (ground.when[earlier] === 0 || ground.when[earlier] === ground.when[column]) &&
  flatBand(ground, rows, earlier) !== null;

function actionOf(
  ground: Ground,
  state: State,
  columns: readonly number[],
  states: States,
  settings: Settings,
): readonly Action[] {
  let { setting } = state;
  let minutes = 0;
  const seen = state.seen.slice();
  for (const column of columns) {
    const change = settings.change(setting, column);
    if (change === null) return [];
    minutes += change.minutes + (ground.minutes[column] as number);
    setting = change.to;
    seen[column] = flatBand(ground, state.rows, column) ?? untaken;
  }
  const last = columns.at(-1) as number;
  const ways = split(ground, state.rows, state.shares, last).map(({ band, share, rows, shares }) => {
    const then = seen.slice();
    then[last] = band;
    return { band, share, to: states.at(rows, shares, then, setting) };
  });
  return [{ columns, minutes, ways }];
}
