import type { BandShare, Cell, Matrix, MatrixColumn } from '../../engine/figures/order/matrix.ts';
import { type Dice, dice } from './dice.ts';

export interface MatrixShape {
  readonly faults: number;
  readonly checks: number;
  /** How often a fault shows several bands in a check. */
  readonly shared: number;
  /** How often a check has to wait for another one. */
  readonly ordered: number;
  /** How often a fault says nothing of a check; never, if not given. */
  readonly silent?: number;
}

/** A matrix of faults and checks that follows from its seed alone: weights 1 to 20, one to nine minutes, two to four bands. */
export function randomMatrix(
  seed: number,
  { faults, checks, shared, ordered, silent = 0 }: MatrixShape,
): Matrix {
  const die = dice(seed);
  const bands = Array.from({ length: checks }, () => 2 + die.upTo(3));
  return {
    rows: Array.from({ length: faults }, (_, fault) => ({
      weight: 1 + die.upTo(20),
      fault,
      cells: bands.map((count) => (silent > 0 && die.chance(silent) ? null : cellOf(die, count, shared))),
    })),
    columns: bands.map((_, column) => columnOf(die, column, bands, ordered)),
  };
}

function cellOf(die: Dice, bands: number, shared: number): Cell {
  // Most faults leave most readings normal.
  const one = die.chance(0.6) ? 0 : die.upTo(bands);
  if (!die.chance(shared)) return one;
  const other = (one + 1 + die.upTo(bands - 1)) % bands;
  const share = (1 + die.upTo(9)) / 10;
  const cell: readonly BandShare[] = [
    { band: one, share },
    { band: other, share: 1 - share },
  ];
  return cell;
}

function columnOf(die: Dice, column: number, bands: readonly number[], ordered: number): MatrixColumn {
  const minutes = 1 + die.upTo(9);
  if (column === 0 || !die.chance(ordered)) return { minutes };
  const earlier = die.upTo(column);
  return die.chance(0.5)
    ? { minutes, after: [earlier] }
    : { minutes, only: [{ column: earlier, bands: die.some([...Array(bands[earlier]).keys()]) }] };
}
