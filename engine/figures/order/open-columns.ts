import { anything, type Ground, silent } from './ground.ts';
import { untaken } from './state.ts';

export interface Open {
  /** Columns that can still tell rows apart and can still come to be taken; none where the game is over. */
  readonly open: readonly number[];
  /** Those and the ones that may not be taken any more. */
  readonly telling: readonly number[];
  /** No open column can tell two faults apart for certain in any case. */
  readonly over: boolean;
}

/** What can still be told in a state. */
export function openColumns(ground: Ground, rows: Int16Array, seen: Int8Array): Open {
  const open: number[] = [];
  const telling: number[] = [];
  let over = true;
  const first = ground.fault[rows[0] ?? 0];
  if (rows.every((row) => ground.fault[row] === first)) return { open, telling, over };
  for (let column = 0; column < ground.columns; column += 1) {
    if (seen[column] !== untaken) continue;
    const what = tells(ground, rows, column);
    if (what === 'nothing') continue;
    telling.push(column);
    if (!canBeTaken(ground, rows, seen, column)) continue;
    open.push(column);
    if (what === 'apart') over = false;
  }
  return { open: over ? [] : open, telling, over };
}

/** `apart`: two faults differ in what they can show. `likelier`: they can show the same, but not as often. */
export function tells(ground: Ground, rows: Int16Array, column: number): 'nothing' | 'likelier' | 'apart' {
  const { columns, alike, support, fault } = ground;
  let first = silent;
  let telling = false;
  let firstBits = 0;
  let differ = false;
  let firstFault = -1;
  let faults = false;
  for (const row of rows) {
    const place = row * columns + column;
    const id = alike[place] as number;
    if (id === silent) continue;
    if (first === silent) {
      first = id;
      firstBits = support[place] as number;
      firstFault = fault[row] as number;
      continue;
    }
    if (id !== first) telling = true;
    if (support[place] !== firstBits) differ = true;
    if (fault[row] !== firstFault) faults = true;
    if (differ && faults) return 'apart';
  }
  return telling ? 'likelier' : 'nothing';
}

/** Whether everything that must have been seen before was seen, or can still come out so. */
export function canBeTaken(ground: Ground, rows: Int16Array, seen: Int8Array, column: number): boolean {
  for (const { column: earlier, bits } of ground.demands[column] ?? []) {
    const band = seen[earlier] as number;
    if (band !== untaken) {
      if (((bits >> band) & 1) === 0) return false;
    } else if (!canShow(ground, rows, earlier, bits)) return false;
  }
  return true;
}

/** Whether a column can come out in one of these bands. Rows that say nothing go along with the others; alone they allow everything. */
function canShow({ columns, support }: Ground, rows: Int16Array, column: number, bits: number): boolean {
  let silent = true;
  for (const row of rows) {
    const shown = support[row * columns + column] as number;
    if ((shown & bits) !== 0) return true;
    if (shown !== 0) silent = false;
  }
  return silent;
}

/** The one band that all rows show in a column; null where they can show several. */
export function flatBand({ columns, band }: Ground, rows: Int16Array, column: number): number | null {
  let found: number | null = null;
  for (const row of rows) {
    const here = band[row * columns + column] as number;
    if (here === silent) continue;
    if (here < 0 || (found !== null && here !== found)) return null;
    found = here;
  }
  return found ?? anything;
}
