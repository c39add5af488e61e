import type { Costs } from './costs.ts';
import { emptyGains, gainsAt, sharesAfter } from './gains.ts';
import type { Item, Row } from './items.ts';
import { type Point, ratesAt } from './rates.ts';
import { shareOfLargest } from './share-of-largest.ts';
import type { Tables } from './tables.ts';

/** A point that can be come to when the best check is always taken. */
interface Node extends Point {
  /** How likely it is to come here. */
  readonly reach: number;
}

export interface MinutesLeft {
  readonly minutes: number;
  readonly exact: boolean;
}

/** Work that is done at most, in products of a share and a likelihood: some milliseconds. */
const most = 2_000_000;
/** What is less likely to come to than this is left out. */
const leastReach = 1e-5;

/** Expected minutes until one suspect, or several that no check tells apart, make up the share `settled`, when the check with the most bits
 *  for each minute is always taken. The likeliest points are looked at first; where the work becomes too much the rest counts
 *  as nothing, and `exact` is false. */
export function minutesLeft(tables: Tables, row: Row, costs: Costs, settled: number): MinutesLeft {
  const { shares, groups } = tables;
  const gains = emptyGains(tables);
  const open: Node[] = [{ reach: 1, shares, taken: new Map(), conditions: costs.start }];
  let minutes = 0;
  const each = workOf(tables, row);
  let work = 0;
  while (open.length > 0) {
    if (work > most) return { minutes, exact: false };
    const node = likeliest(open);
    if (shareOfLargest(node.shares, groups) >= settled) continue;
    gainsAt(tables, node.shares, gains);
    work += each * rowsLeft(node.shares);
    const [rate] = ratesAt(tables, row, costs, node, gains.bits);
    if (rate === undefined) continue;
    const best = rate.item;
    const { check } = row.items[best] as Item;
    minutes += node.reach * costs.minutes(check, node.conditions);
    const conditions = costs.after(check, node.conditions);
    for (
      let column = tables.start[best] as number;
      column < (tables.start[best + 1] as number);
      column += 1
    ) {
      const reach = node.reach * (gains.bands[column] as number);
      if (reach < leastReach) continue;
      const after = new Float64Array(shares.length);
      sharesAfter(tables, node.shares, column, after);
      open.push({ reach, shares: after, taken: new Map(node.taken).set(best, column), conditions });
    }
  }
  return { minutes, exact: true };
}

function likeliest(open: Node[]): Node {
  let at = 0;
  for (let index = 1; index < open.length; index += 1) {
    if ((open[index] as Node).reach > (open[at] as Node).reach) at = index;
  }
  const node = open[at] as Node;
  open[at] = open.at(-1) as Node;
  open.pop();
  return node;
}

const rowsLeft = (shares: Float64Array): number =>
  shares.reduce((count, share) => (share < 1e-9 ? count : count + 1), 0);

/** Products for each row at one point: all checks once, and what each family waits for, one after the other. */
const workOf = ({ width, checks }: Tables, { families }: Row): number =>
  families.reduce(
    (sum, { before, members }) => sum + 4 * (before.length ** 2 / 2 + members.length),
    width + checks,
  );
