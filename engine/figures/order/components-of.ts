import type { Ground } from './ground.ts';
import type { Parted } from './parted.ts';

/** Shares of the sets of rows that no game can end with together: two rows of different sets are always told apart in the end. Coarser
 *  than it might be, never finer. */
export function componentsOf(
  { fault }: Ground,
  rows: Int16Array,
  shares: Float64Array,
  openCount: number,
  { bits, doubtful }: Parted,
): readonly number[] {
  const count = rows.length;
  const classes = new Int16Array(count);
  let found = 1;
  for (let at = 0; at < openCount && found < count; at += 1) {
    if (doubtful[at]) continue;
    const groups = bandGroups(bits, at * count, count);
    if (groups.length < 2) continue;
    const next = new Map<number, number>();
    for (let index = 0; index < count; index += 1) {
      const shown = bits[at * count + index] as number;
      const group = groups.findIndex((group) => (group & shown) !== 0);
      const key = (classes[index] as number) * 32 + group;
      const id = next.get(key) ?? next.size;
      next.set(key, id);
      classes[index] = id;
    }
    found = next.size;
  }
  return joinedByFault(fault, rows, shares, classes, found);
}

/** Sets of bands such that every row shows bands of one set only. */
function bandGroups(bits: Int32Array, from: number, count: number): readonly number[] {
  let groups: number[] = [];
  for (let index = 0; index < count; index += 1) {
    let shown = bits[from + index] as number;
    if (groups.some((group) => (group & shown) === shown)) continue;
    groups = groups.filter((group) => {
      if ((group & shown) === 0) return true;
      shown |= group;
      return false;
    });
    groups.push(shown);
  }
  return groups;
}

function joinedByFault(
  fault: Int32Array,
  rows: Int16Array,
  shares: Float64Array,
  classes: Int16Array,
  found: number,
): readonly number[] {
  const leader = Int16Array.from({ length: found }, (_, at) => at);
  const leaderOf = (at: number): number => {
    let lead = at;
    while (leader[lead] !== lead) lead = leader[lead] as number;
    return lead;
  };
  const classOf = new Map<number, number>();
  for (let index = 0; index < rows.length; index += 1) {
    const of = fault[rows[index] as number] as number;
    const mine = classes[index] as number;
    const other = classOf.get(of);
    if (other === undefined) classOf.set(of, mine);
    else leader[leaderOf(mine)] = leaderOf(other);
  }
  const sums = new Map<number, number>();
  for (let index = 0; index < rows.length; index += 1) {
    const lead = leaderOf(classes[index] as number);
    sums.set(lead, (sums.get(lead) ?? 0) + (shares[index] as number));
  }
  return [...sums.values()];
}
