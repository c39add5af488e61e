import type { Conditions } from '../../next/arranging.ts';
import type { Matrix } from './matrix.ts';

/** The conditions a board can be in, by index, as a search meets them. */
export class Settings {
  readonly #matrix: Matrix;
  readonly #known: Conditions[];
  readonly #index = new Map<string, number>();
  /** By `from * columns + column`. */
  readonly #changes = new Map<number, { readonly minutes: number; readonly to: number } | null>();
  readonly start: number;

  constructor(matrix: Matrix) {
    this.#matrix = matrix;
    this.#known = [];
    this.start = this.#indexOf(matrix.arranging?.now ?? {});
  }

  /** What it takes to bring the board into the conditions of a column. Null where that cannot be. */
  change(from: number, column: number): { readonly minutes: number; readonly to: number } | null {
    const key = from * this.#matrix.columns.length + column;
    const before = this.#changes.get(key);
    if (before !== undefined) return before;
    const change = this.#changeOf(from, this.#matrix.columns[column]?.when ?? {});
    this.#changes.set(key, change);
    return change;
  }

  #changeOf(from: number, wanted: Conditions): { readonly minutes: number; readonly to: number } | null {
    const { arranging } = this.#matrix;
    const now = this.#known[from] as Conditions;
    if (arranging === undefined || Object.entries(wanted).every(([id, value]) => now[id] === value))
      return { minutes: 0, to: from };
    const minutes = arranging.minutesTo(wanted, now);
    return minutes === null ? null : { minutes, to: this.#indexOf({ ...now, ...wanted }) };
  }

  #indexOf(conditions: Conditions): number {
    const key = JSON.stringify(Object.entries(conditions).toSorted());
    const known = this.#index.get(key);
    if (known !== undefined) return known;
    this.#index.set(key, this.#known.length);
    return this.#known.push(conditions) - 1;
  }
}
