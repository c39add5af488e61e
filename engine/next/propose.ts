import type { Reading } from '../model/reading.ts';
import { bandsOf } from '../scale/index.ts';
import type { Belief } from '../suspects/belief.ts';
import type { Arranging } from './arranging.ts';
import type { Check } from './check.ts';
import { type Costs, costsOf } from './costs.ts';
import { emptyGains, type Gains, gainsAt } from './gains.ts';
import { lookAhead } from './look-ahead.ts';
import { minutesLeft } from './minutes-left.ts';
import { originsOf } from './origins-of.ts';
import { partsOf } from './parts-of.ts';
import type { Proposal, Proposals } from './proposal.ts';
import { settled } from './settled.ts';
import { type Tables, tablesOf } from './tables.ts';

export interface ProposeOptions {
  /** What changes of the board's condition take. Without it each check takes what it takes now, whatever was taken before. */
  readonly arranging?: Arranging;
  /** How many of the best are looked at with what could follow; 8 if not given, 0 for one step alone. */
  readonly lookAhead?: number;
  /** The share from which one suspect, or several that no check tells apart, can be named; `settled` if not given. */
  readonly settled?: number;
}

/** A check that tells less, in bits, tells nothing. */
const leastBits = 1e-6;

/** Ranks checks by what they are expected to tell of what the board has for each minute they take, the best few with the
 *  check that would follow. Equals stay in the order in which they come. What is known already is left out. */
export function propose(
  belief: Belief,
  tree: { readonly readings: readonly Reading[] },
  checks: readonly Check[],
  options: ProposeOptions = {},
): Proposals {
  const tables = tablesOf(belief, checks);
  const gains = gainsAt(tables, tables.shares, emptyGains(tables));
  const costs = costsOf(options.arranging ?? null);
  const enough = options.settled ?? settled;
  const pairRate = pairsOf(tables, gains, checks, costs, originsOf(tree), enough);
  const rates = ratesOf(gains, checks, costs, pairRate, options.lookAhead ?? 8);
  const ranked = rates.map(({ at, rate }) => proposalOf(tables, gains, checks, at, rate));
  const { minutes, exact } = minutesLeft(tables, checks, costs, enough);
  return { ranked, minutesLeft: minutes, exact };
}

interface Rate {
  readonly at: number;
  readonly rate: number;
}

function ratesOf(
  { bits }: Gains,
  checks: readonly Check[],
  costs: Costs,
  pairRate: (at: number) => number,
  deep: number,
): readonly Rate[] {
  const alone = checks
    .map((check, at) => ({ at, rate: (bits[at] as number) / costs.minutes(check, costs.start) }))
    .filter(({ at }) => (bits[at] as number) > leastBits)
    .toSorted(byRate);
  const looked = alone.slice(0, deep).map(({ at }) => ({ at, rate: pairRate(at) }));
  return [...looked.toSorted(byRate), ...alone.slice(deep)];
}

/** The rate of a check together with what would follow it. What one of several that are alike has told, the others do not
 *  tell again. */
function pairsOf(
  tables: Tables,
  { bits, bands }: Gains,
  checks: readonly Check[],
  costs: Costs,
  originOf: (reading: string) => string,
  enough: number,
): (at: number) => number {
  return (at) => {
    const first = checks[at] as Check;
    const then = costs.after(first, costs.start);
    const origin = originOf(first.reading.id);
    const minutesThen = (second: number): number => {
      const check = checks[second] as Check;
      return originOf(check.reading.id) === origin ? Number.POSITIVE_INFINITY : costs.minutes(check, then);
    };
    const minutes = costs.minutes(first, costs.start);
    return lookAhead(tables, bands, { check: at, bits: bits[at] as number, minutes, minutesThen }, enough);
  };
}

/** Rates that differ by less are equal. */
const hair = 1e-9;

const byRate = (a: Rate, b: Rate): number =>
  Math.abs(a.rate - b.rate) <= hair * Math.max(a.rate, b.rate) ? a.at - b.at : b.rate - a.rate;

function proposalOf(
  tables: Tables,
  { bits, bands }: Gains,
  checks: readonly Check[],
  at: number,
  rate: number,
): Proposal {
  const check = checks[at] as Check;
  const from = tables.start[at] as number;
  const shares = bandsOf(check.reading).map((band, index) => ({
    band,
    share: bands[from + index] as number,
  }));
  return {
    check,
    bits: bits[at] as number,
    rate,
    bands: shares.toSorted((a, b) => b.share - a.share),
    parts: partsOf(tables, at, check, bands),
  };
}
