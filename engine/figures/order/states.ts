import { lowerBound } from './bound.ts';
import type { Ground } from './ground.ts';
import { openColumns, tells } from './open-columns.ts';
import { type State, untaken } from './state.ts';

/** Every state that a search has come to, each once. */
export class States {
  readonly #ground: Ground;
  readonly #known = new Map<string, State>();

  constructor(ground: Ground) {
    this.#ground = ground;
  }

  get count(): number {
    return this.#known.size;
  }

  /** @param shares in any scale */
  at(rows: Int16Array, shares: Float64Array, seen: Int8Array, setting: number): State {
    const ground = this.#ground;
    const { open, telling, over } = openColumns(ground, rows, seen);
    const kept = over ? null : this.#settled(rows, seen, telling);
    const where = open.some((column) => ground.when[column] !== 0) ? setting : 0;
    const key = keyOf(ground, rows, shares, kept, where);
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const scaled = toOne(shares);
    const state: State = {
      rows,
      shares: scaled,
      seen: kept ?? seen,
      setting: where,
      open,
      low: over ? 0 : lowerBound(ground, rows, scaled, kept ?? seen, open),
      high: over ? 0 : Number.POSITIVE_INFINITY,
      actions: over ? [] : null,
    };
    this.#known.set(key, state);
    return state;
  }

  /** What was taken and no longer matters is forgotten: it neither stands before a column that could tell something nor could tell anything itself. */
  #settled(rows: Int16Array, seen: Int8Array, telling: readonly number[]): Int8Array {
    const ground = this.#ground;
    const kept = new Int8Array(seen.length).fill(untaken);
    for (const column of telling) {
      for (const earlier of ground.before[column] as readonly number[])
        kept[earlier] = seen[earlier] as number;
    }
    for (let column = 0; column < seen.length; column += 1) {
      const band = seen[column] as number;
      if (band === untaken || kept[column] !== untaken) continue;
      if (tells(ground, rows, column) !== 'nothing') kept[column] = band;
    }
    return kept;
  }
}

function toOne(shares: Float64Array): Float64Array {
  let sum = 0;
  for (const share of shares) sum += share;
  return shares.map((share) => share / sum);
}

/** Names rows, what was taken, the conditions, and how much likelier each row has become beside the first. */
function keyOf(
  { prior }: Ground,
  rows: Int16Array,
  shares: Float64Array,
  seen: Int8Array | null,
  setting: number,
): string {
  const key = String.fromCharCode(setting, rows.length, ...rows);
  const first = (shares[0] as number) / (prior[rows[0] as number] as number);
  let ratios = '';
  let even = true;
  for (let at = 0; at < rows.length; at += 1) {
    const ratio = (shares[at] as number) / (prior[rows[at] as number] as number) / first;
    if (Math.abs(ratio - 1) > 1e-9) even = false;
    ratios += `${ratio.toPrecision(9)} `;
  }
  // A game that is over is another state than the same rows before it.
  if (seen === null) return `${key}over${even ? '' : ratios}`;
  let taken = '';
  for (let column = 0; column < seen.length; column += 1) {
    const band = seen[column] as number;
    if (band !== untaken) taken += String.fromCharCode(column, band);
  }
  return `${key}${String.fromCharCode(taken.length)}${taken}${even ? '' : ratios}`;
}
