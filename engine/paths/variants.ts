import { type Cell, holds, joined } from './cells.ts';

/** What can be known on entering one section: cells none of which holds another. */
export class Variants {
  readonly #most: number;
  #cells: readonly Cell[] = [];
  #together = false;

  /** @param most more different sets of known bands than this are taken together */
  constructor(most: number) {
    this.#most = most;
  }

  get cells(): readonly Cell[] {
    return this.#cells;
  }

  /** There were too many, so that their common hull stands for them: it holds combinations that no walk knows. */
  get together(): boolean {
    return this.#together;
  }

  /** @returns what is new and must be walked on from; null where all of it was known */
  add(cell: Cell): Cell | null {
    if (this.#cells.some((known) => holds(known, cell))) return null;
    const [hull] = this.#cells;
    if (this.#together && hull !== undefined) return this.#only(joined(hull, cell));
    const others = this.#cells.filter((known) => !holds(cell, known));
    if (others.length < this.#most) {
      this.#cells = [...others, cell];
      return cell;
    }
    this.#together = true;
    return this.#only(others.reduce(joined, cell));
  }

  #only(cell: Cell): Cell {
    this.#cells = [cell];
    return cell;
  }
}
