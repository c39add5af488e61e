import { type Ground, silent } from './ground.ts';
import { untaken } from './state.ts';

/** What each open column shows in each row of a state, as bits, with what cannot come to be taken there.
 *  `bits[index of the open column * rows + index of the row]`; 0 where nothing can be said. */
export interface Parted {
  readonly bits: Int32Array;
  /** Open columns of which something cannot be said in some row. */
  readonly doubtful: Uint8Array;
}

/** Stands for "may not be taken on this board". */
const barred = 1 << 30;

/** @returns what tells which pairs of rows no game can leave together */
export function partedBy(ground: Ground, rows: Int16Array, seen: Int8Array, open: readonly number[]): Parted {
  const { columns, support, band, demands } = ground;
  const bits = new Int32Array(open.length * rows.length);
  const doubtful = new Uint8Array(open.length);
  for (let at = 0; at < open.length; at += 1) {
    const column = open[at] as number;
    const asked = demands[column] as Ground['demands'][number];
    for (let index = 0; index < rows.length; index += 1) {
      const from = (rows[index] as number) * columns;
      let shown = support[from + column] as number;
      if (band[from + column] === silent) shown = 0;
      for (const { column: earlier, bits: wanted } of asked) {
        if (seen[earlier] !== untaken || shown === 0) continue;
        const there = support[from + earlier] as number;
        if ((there & wanted) === 0 && there !== 0) shown = barred;
        else if ((there & ~wanted) !== 0 || there === 0) shown = 0;
      }
      if (shown === 0) doubtful[at] = 1;
      bits[at * rows.length + index] = shown;
    }
  }
  return { bits, doubtful };
}

/** In how many ways an open column can come out at the most, 2 or more. */
export function mostOutcomes({ bits }: Parted, open: number): number {
  const rows = bits.length / Math.max(1, open);
  let most = 2;
  for (let at = 0; at < open; at += 1) {
    let shown = 0;
    for (let index = 0; index < rows; index += 1) shown |= bits[at * rows + index] as number;
    let count = 0;
    for (let left = shown; left !== 0; left &= left - 1) count += 1;
    if (count > most) most = count;
  }
  return most;
}
