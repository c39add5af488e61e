import { capacityOf } from './capacity-of.ts';
import type { Cell, Matrix } from './matrix.ts';

/** What a search asks of a matrix again and again, as plain numbers. `row * columns + column` is the place of a cell. */
export interface Ground {
  readonly rows: number;
  readonly columns: number;
  readonly fault: Int32Array;
  /** Shares of the rows at the start; they add up to 1. */
  readonly prior: Float64Array;
  /** The band of a cell that has one; `soft` where it has several, `silent` where it says nothing. */
  readonly band: Int8Array;
  /** Equal in a column where two rows show the same with the same shares; `silent` where one says nothing. */
  readonly alike: Int16Array;
  /** The bands a cell can show, as bits; 0 where it says nothing. */
  readonly support: Int32Array;
  /** How likely each band is, by place; only where the cell is soft. */
  readonly shares: readonly (Float64Array | null)[];
  readonly minutes: Float64Array;
  /** Bands of each column. */
  readonly bands: Int8Array;
  /** Bits that a column can tell in one go at the most, whatever the rows weigh. */
  readonly capacity: Float64Array;
  /** What has to be taken before each column, directly or not; what comes first stands first. */
  readonly before: readonly (readonly number[])[];
  /** Bands, as bits, that something taken before must have come out in, directly or not. */
  readonly demands: readonly (readonly { readonly column: number; readonly bits: number }[])[];
  /** Index of the conditions a column is taken in; 0 where it does not matter. */
  readonly when: Int16Array;
}

export const soft = -1;
export const silent = -2;
export const mostBands = 30;
/** Stands for the band of a column of which no row says anything: whatever is asked of it is met. */
export const anything = 31;

export function groundOf(matrix: Matrix): Ground {
  const rows = matrix.rows.length;
  const columns = matrix.columns.length;
  const total = matrix.rows.reduce((sum, { weight }) => sum + weight, 0);
  const cells = matrix.rows.flatMap((row) => matrix.columns.map((_, column) => row.cells[column] ?? null));
  const bands = matrix.columns.map((_, column) =>
    Math.max(1, ...matrix.rows.map((row) => topOf(row.cells[column] ?? null) + 1)),
  );
  if (bands.some((count) => count > mostBands))
    throw new RangeError(`a column has more than ${mostBands} bands`);
  const shares = cells.map((cell, place) => sharesOf(cell, bands[place % columns] as number));
  const before = matrix.columns.map((_, column) => beforeOf(matrix, column));
  return {
    rows,
    columns,
    fault: Int32Array.from(matrix.rows, ({ fault }) => fault),
    prior: Float64Array.from(matrix.rows, ({ weight }) => weight / total),
    band: Int8Array.from(cells, (cell, place) => bandOf(cell, shares[place] ?? null)),
    alike: alikeOf(cells, columns),
    support: Int32Array.from(cells, supportOf),
    shares,
    minutes: Float64Array.from(matrix.columns, ({ minutes }) => minutes),
    bands: Int8Array.from(bands),
    capacity: Float64Array.from(bands, (count, column) =>
      capacityOf(matrix.rows.flatMap((_, row) => chances(cells[row * columns + column] ?? null, count))),
    ),
    before,
    demands: before.map((earlier, column) => demandsOf(matrix, [...earlier, column])),
    when: whenOf(matrix),
  };
}

const topOf = (cell: Cell): number =>
  cell === null ? 0 : typeof cell === 'number' ? cell : Math.max(...cell.map(({ band }) => band));

function bandOf(cell: Cell, shares: Float64Array | null): number {
  if (cell === null) return silent;
  if (typeof cell === 'number') return cell;
  return shares === null ? (cell.find(({ share }) => share > 0)?.band ?? 0) : soft;
}

/** Null where one band takes all. */
function sharesOf(cell: Cell, bands: number): Float64Array | null {
  if (cell === null || typeof cell === 'number') return null;
  const shares = new Float64Array(bands);
  for (const { band, share } of cell) shares[band] = (shares[band] as number) + share;
  return shares.filter((share) => share > 0).length > 1 ? shares : null;
}

/** As shares of all bands; nothing where the cell says nothing. */
function chances(cell: Cell, bands: number): readonly Float64Array[] {
  if (cell === null) return [];
  const all = new Float64Array(bands);
  for (const { band, share } of typeof cell === 'number' ? [{ band: cell, share: 1 }] : cell)
    all[band] = share;
  return [all];
}

function supportOf(cell: Cell): number {
  if (cell === null) return 0;
  if (typeof cell === 'number') return 1 << cell;
  return cell.reduce((bits, { band, share }) => (share > 0 ? bits | (1 << band) : bits), 0);
}

function alikeOf(cells: readonly Cell[], columns: number): Int16Array {
  const known = Array.from({ length: columns }, () => new Map<string, number>());
  return Int16Array.from(cells, (cell, place) => {
    if (cell === null) return silent;
    const ids = known[place % columns] as Map<string, number>;
    const key = keyOf(cell);
    const id = ids.get(key) ?? ids.size;
    ids.set(key, id);
    return id;
  });
}

/** Shares that differ by rounding are the same. */
const keyOf = (cell: Exclude<Cell, null>): string =>
  typeof cell === 'number'
    ? `${cell}:1.00000000`
    : cell
        .filter(({ share }) => share > 0)
        .toSorted((one, other) => one.band - other.band)
        .map(({ band, share }) => `${band}:${share.toFixed(8)}`)
        .join(' ');

/** Depth first; a circle comes to an end. */
function beforeOf({ columns }: Matrix, column: number): readonly number[] {
  const found: number[] = [];
  const passed = new Set([column]);
  const visit = (at: number): void => {
    const { after = [], only = [] } = columns[at] ?? {};
    for (const earlier of [...after, ...only.map((one) => one.column)]) {
      if (passed.has(earlier)) continue;
      passed.add(earlier);
      visit(earlier);
      found.push(earlier);
    }
  };
  visit(column);
  return found;
}

function demandsOf({ columns }: Matrix, of: readonly number[]): Ground['demands'][number] {
  const bits = new Map<number, number>();
  for (const { column, bands } of of.flatMap((at) => columns[at]?.only ?? [])) {
    const wanted = bands.reduce((sum, band) => sum | (1 << band), 1 << anything);
    bits.set(column, (bits.get(column) ?? -1) & wanted);
  }
  return [...bits].map(([column, wanted]) => ({ column, bits: wanted }));
}

function whenOf({ columns }: Matrix): Int16Array {
  const known = new Map<string, number>([['[]', 0]]);
  return Int16Array.from(columns, ({ when = {} }) => {
    const key = JSON.stringify(Object.entries(when).toSorted());
    const id = known.get(key) ?? known.size;
    known.set(key, id);
    return id;
  });
}
