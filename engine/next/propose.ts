import type { Reading } from '../model/reading.ts';
import { bandsOf } from '../scale/index.ts';
import type { Belief } from '../suspects/belief.ts';
import type { Arranging } from './arranging.ts';
import type { Check } from './check.ts';
import { type Costs, costsOf } from './costs.ts';
import { emptyGains, type Gains, gainsAt } from './gains.ts';
import { type Item, rowOf } from './items.ts';
import type { Later } from './later.ts';
import { lookAhead } from './look-ahead.ts';
import { type MinutesLeft, minutesLeft } from './minutes-left.ts';
import { originsOf } from './origins-of.ts';
import { partsOf } from './parts-of.ts';
import type { Proposal, Proposals } from './proposal.ts';
import { byRate, type Point, type Rate, ratesAt } from './rates.ts';
import { settled } from './settled.ts';
import { type Tables, tablesOf } from './tables.ts';

export interface ProposeOptions {
  /** What changes of the board's condition take. Without it each check takes what it takes now, whatever was taken before. */
  readonly arranging?: Arranging;
  /** Checks that wait for others, so that those can count for what they open up. */
  readonly later?: readonly Later[];
  /** How many of the best are looked at with what could follow; 8 if not given, 0 for one step alone. */
  readonly lookAhead?: number;
  /** The share from which one suspect, or several that no check tells apart, can be named; `settled` if not given. */
  readonly settled?: number;
}

/** Ranks checks by what they are expected to tell of what the board has for each minute they take, the best few with the
 *  check that would follow. A check that others wait for counts for what it opens up, where that is more. Equals stay in the order in
 *  which they come. What is known already, or tells next to nothing, is left out. */
export function propose(
  belief: Belief,
  tree: { readonly readings: readonly Reading[] },
  checks: readonly Check[],
  options: ProposeOptions = {},
): Proposals {
  const row = rowOf(checks, options.later ?? []);
  const { items } = row;
  const tables = tablesOf(
    belief,
    items.map(({ check }) => check),
  );
  const gains = gainsAt(tables, tables.shares, emptyGains(tables));
  const costs = costsOf(options.arranging ?? null);
  const enough = options.settled ?? settled;
  const start: Point = { shares: tables.shares, taken: new Map(), conditions: costs.start };
  const alone = ratesAt(tables, row, costs, start, gains.bits);
  const deep = options.lookAhead ?? 8;
  const pairRate = pairsOf(tables, gains, items, costs, originsOf(tree), enough);
  const looked = alone.slice(0, deep).map((one) => {
    const pair = pairRate(one.item);
    return one.target === one.item || pair > one.rate ? { ...one, rate: pair } : one;
  });
  const ranked = [...looked.toSorted(byRate), ...alone.slice(deep)];
  let left: MinutesLeft | null = null;
  const ahead = (): MinutesLeft => {
    left ??= minutesLeft(tables, row, costs, enough);
    return left;
  };
  // Who takes the best needs no figure of what is left: it is worked out when it is asked for.
  return {
    ranked: ranked.map((one) => proposalOf(tables, gains, items, one)),
    get minutesLeft() {
      return ahead().minutes;
    },
    get exact() {
      return ahead().exact;
    },
  };
}

/** The rate of a check together with what would follow it. What one of several that are alike has told, the others do not
 *  tell again. */
function pairsOf(
  tables: Tables,
  { bits, bands }: Gains,
  items: readonly Item[],
  costs: Costs,
  originOf: (reading: string) => string,
  enough: number,
): (item: number) => number {
  return (item) => {
    const first = (items[item] as Item).check;
    const then = costs.after(first, costs.start);
    const origin = originOf(first.reading.id);
    const minutesThen = (second: number): number => {
      const { check, before } = items[second] as Item;
      const tellsNew = before.length === 0 && originOf(check.reading.id) !== origin;
      return tellsNew ? costs.minutes(check, then) : Number.POSITIVE_INFINITY;
    };
    const minutes = costs.minutes(first, costs.start);
    return lookAhead(
      tables,
      bands,
      { check: item, bits: bits[item] as number, minutes, minutesThen },
      enough,
    );
  };
}

function proposalOf(
  tables: Tables,
  { bits, bands }: Gains,
  items: readonly Item[],
  { item, target, rate }: Rate,
): Proposal {
  const { check } = items[item] as Item;
  const from = tables.start[item] as number;
  const shares = bandsOf(check.reading).map((band, index) => ({
    band,
    share: bands[from + index] as number,
  }));
  return {
    check,
    bits: bits[item] as number,
    rate,
    ...(target === item ? {} : { opens: (items[target] as Item).check.reading }),
    bands: shares.toSorted((a, b) => b.share - a.share),
    get parts() {
      return partsOf(tables, item, check, bands);
    },
  };
}
