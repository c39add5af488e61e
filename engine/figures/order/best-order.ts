import { actionsOf } from './actions-of.ts';
import { type Ground, groundOf } from './ground.ts';
import type { Matrix } from './matrix.ts';
import { mostTelling } from './most-telling.ts';
import { Settings } from './settings.ts';
import { type Action, type State, untaken } from './state.ts';
import { States } from './states.ts';

/** How far a search has come: the best order takes between `low` and `high` minutes. */
export interface Found {
  readonly low: number;
  readonly high: number;
  /** States looked into. */
  readonly looked: number;
  readonly exact: boolean;
}

/**
 * Looks for the order of columns that tells the faults of a matrix apart in the least expected minutes. What is taken next
 * may depend on all that was seen; the game is over when no column can tell two of the faults left apart.
 *
 * States and actions make a graph of "one of these" and "all of these" (AO*). Each state knows a bound below which nothing can go and the
 * best that was found. A round goes down from the start along what promises most, to where most is open, looks into states
 * until the game is over on every way, and carries both figures up again. They only come closer; where they meet, the order is the best.
 */
export class BestOrder {
  readonly #ground: Ground;
  readonly #states: States;
  readonly #settings: Settings;
  readonly #start: State;
  #looked = 0;

  constructor(matrix: Matrix) {
    this.#ground = groundOf(matrix);
    this.#states = new States(this.#ground);
    this.#settings = new Settings(matrix);
    const { rows, columns, prior } = this.#ground;
    const all = Int16Array.from({ length: rows }, (_, row) => row);
    this.#start = this.#states.at(all, prior, new Int8Array(columns).fill(untaken), this.#settings.start);
  }

  get start(): State {
    return this.#start;
  }

  get found(): Found {
    const { low, high } = this.#start;
    const exact = isSettled(this.#start);
    return { low: exact ? high : low, high, looked: this.#looked, exact };
  }

  /** Goes on until the order is the best, or so many more states were looked into. */
  advance(states: number): Found {
    const until = this.#looked + states;
    while (!isSettled(this.#start) && this.#looked < until) this.#round();
    return this.found;
  }

  #round(): void {
    const way: State[] = [];
    let at: State | null = this.#start;
    while (at !== null && at.actions !== null) {
      way.push(at);
      at = mostOpen(at);
    }
    if (at !== null) this.#lookInto(at);
    for (const state of way.reverse()) settle(state);
  }

  /** Until the game is over on every way of what tells most for each minute. */
  #lookInto(state: State): void {
    if (state.actions !== null) return;
    this.#looked += 1;
    state.actions = actionsOf(this.#ground, state, this.#states, this.#settings);
    const action = mostTelling(state, this.#ground);
    for (const { to } of action?.ways ?? []) this.#lookInto(to);
    settle(state);
  }
}

/** Minutes closer together than this are the same. */
const hair = 1e-10;

const isSettled = ({ low, high }: State): boolean => high - low <= hair * (1 + low);

const lowOf = ({ minutes, ways }: Action): number => {
  let sum = minutes;
  for (const { share, to } of ways) sum += share * to.low;
  return sum;
};

const highOf = ({ minutes, ways }: Action): number => {
  let sum = minutes;
  for (const { share, to } of ways) sum += share * to.high;
  return sum;
};

function promising({ actions }: State): Action | null {
  let best: Action | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const action of actions ?? []) {
    const low = lowOf(action);
    if (low >= least) continue;
    best = action;
    least = low;
  }
  return best;
}

/** The way of the most promising action on which most is open; null where nothing is. */
function mostOpen(state: State): State | null {
  let found: State | null = null;
  let most = 0;
  for (const { share, to } of promising(state)?.ways ?? []) {
    if (isSettled(to)) continue;
    const gap = share * Math.min(1e6, to.high - to.low);
    if (gap <= most) continue;
    found = to;
    most = gap;
  }
  return found;
}

/** Carries up what is known of the ways; an action that cannot be the best any more is dropped. */
function settle(state: State): void {
  let { high } = state;
  let low = Number.POSITIVE_INFINITY;
  for (const action of state.actions ?? []) {
    low = Math.min(low, lowOf(action));
    high = Math.min(high, highOf(action));
  }
  if (state.actions?.length === 0) return;
  state.low = Math.max(state.low, Math.min(low, high));
  state.high = high;
  if (state.actions !== null && state.actions.length > 1)
    state.actions = state.actions.filter((action) => lowOf(action) <= high + hair);
}

/** The action of the best order found; null where the game is over. */
export function bestAction({ actions }: State): Action | null {
  let best: Action | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const action of actions ?? []) {
    const high = highOf(action);
    if (high >= least) continue;
    best = action;
    least = high;
  }
  return best;
}
