import type { Ground } from './ground.ts';
import type { Parted } from './parted.ts';

/** Every board must at least see the cheapest column that tells it from the one that is hardest to tell from it.
 *  @param minutes of the open columns */
export function pairBound(
  { fault }: Ground,
  rows: Int16Array,
  shares: Float64Array,
  minutes: readonly number[],
  { bits, doubtful }: Parted,
): number {
  const count = rows.length;
  const order = minutes.map((_, at) => at).filter((at) => !doubtful[at]);
  order.sort((one, other) => (minutes[one] as number) - (minutes[other] as number));
  const most = new Float64Array(count);
  for (let one = 0; one < count; one += 1) {
    for (let other = one + 1; other < count; other += 1) {
      if (fault[rows[one] as number] === fault[rows[other] as number]) continue;
      const at = order.find((each) => bits[each * count + one] !== bits[each * count + other]);
      if (at === undefined) continue;
      const cost = minutes[at] as number;
      if (cost > (most[one] as number)) most[one] = cost;
      if (cost > (most[other] as number)) most[other] = cost;
    }
  }
  let bound = 0;
  for (let index = 0; index < count; index += 1) bound += (most[index] as number) * (shares[index] as number);
  return bound;
}
