import { entropyOf } from '../../suspects/entropy-of.ts';
import type { Ground } from './ground.ts';
import type { Action, State } from './state.ts';

/** The action that tells most of the fault for each minute, looking one step ahead; null where the game is over. */
export function mostTelling(state: State, ground: Ground): Action | null {
  const before = doubtOf(state, ground);
  let best: Action | null = null;
  let most = Number.NEGATIVE_INFINITY;
  for (const action of state.actions ?? []) {
    let after = 0;
    for (const { share, to } of action.ways) after += share * doubtOf(to, ground);
    // What only has to be done first comes last, the shorter the sooner.
    const rate = before - after > 1e-12 ? (before - after) / Math.max(action.minutes, 1e-9) : -action.minutes;
    if (rate <= most) continue;
    best = action;
    most = rate;
  }
  return best;
}

/** Bits that are missing until the fault is known. */
function doubtOf({ rows, shares }: State, { fault }: Ground): number {
  const sums = new Map<number, number>();
  rows.forEach((row, at) => {
    const of = fault[row] as number;
    sums.set(of, (sums.get(of) ?? 0) + (shares[at] as number));
  });
  return entropyOf([...sums.values()]);
}
