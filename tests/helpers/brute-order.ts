import type { Cell, Matrix } from '../../engine/figures/order/matrix.ts';

/** The least expected minutes of any order, tried out in full: every check that may be taken next, and all that it can show. Keeps what
 *  was worked out for the same bands seen, and knows no bound. Rows that say nothing of a check go along with the others. */
export function bruteOrder({ rows, columns }: Matrix): number {
  const total = rows.reduce((sum, { weight }) => sum + weight, 0);
  const known = new Map<string, number>();

  const least = (weights: readonly number[], seen: readonly (number | null)[]): number => {
    // Of rows that say nothing the weights depend on the order in which the bands were seen.
    const key = `${seen.join()} ${weights.map((weight) => weight.toPrecision(10)).join()}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const left = rows.flatMap((_, row) => ((weights[row] as number) > 0 ? [row] : []));
    const ready = columns.flatMap((_, column) => (mayBeTaken(column, seen) ? [column] : []));
    let best = isOver(left, seen) ? 0 : Number.POSITIVE_INFINITY;
    if (best > 0) for (const column of ready) best = Math.min(best, costOf(column, weights, seen));
    known.set(key, best);
    return best;
  };

  /** Minutes times weight. */
  const costOf = (column: number, weights: readonly number[], seen: readonly (number | null)[]): number => {
    let cost = (columns[column]?.minutes ?? 0) * weights.reduce((sum, weight) => sum + weight, 0);
    const spoken = rows.filter(({ cells }, row) => cells[column] !== null && (weights[row] as number) > 0);
    // Where nobody left says anything it comes out in any way, and tells nothing.
    if (spoken.length === 0) return cost + least(weights, seen.with(column, anything));
    const bands = new Set(spoken.flatMap(({ cells }) => bandsOf(cells[column] ?? null)));
    for (const band of bands) {
      const others = shareOfOthers(column, band, weights);
      const then = weights.map((weight, row) => {
        const cell = rows[row]?.cells[column] ?? null;
        return weight * (cell === null ? others : likely(cell, band));
      });
      if (then.some((weight) => weight > 0)) cost += least(then, seen.with(column, band));
    }
    return cost;
  };

  /** How likely a band is among the rows that say something. */
  const shareOfOthers = (column: number, band: number, weights: readonly number[]): number => {
    let all = 0;
    let here = 0;
    for (const [row, { cells }] of rows.entries()) {
      const cell = cells[column] ?? null;
      if (cell === null) continue;
      all += weights[row] as number;
      here += (weights[row] as number) * likely(cell, band);
    }
    return here / all;
  };

  const mayBeTaken = (column: number, seen: readonly (number | null)[]): boolean => {
    const { after = [], only = [] } = columns[column] ?? {};
    return (
      seen[column] === null &&
      after.every((earlier) => seen[earlier] !== null) &&
      only.every((need) => seen[need.column] !== null && isMet(need.bands, seen[need.column] as number))
    );
  };

  /** Whether a check that stands before another can still come out as it must on one of the boards left. */
  const canCome = (column: number, left: readonly number[], seen: readonly (number | null)[]): boolean => {
    if (seen[column] !== null) return true;
    const { after = [], only = [] } = columns[column] ?? {};
    return (
      after.every((earlier) => canCome(earlier, left, seen)) &&
      only.every(({ column: earlier, bands }) =>
        seen[earlier] === null
          ? canCome(earlier, left, seen) &&
            allows(
              left.map((row) => rows[row]?.cells[earlier] ?? null),
              bands,
            )
          : isMet(bands, seen[earlier] as number),
      )
    );
  };

  const isOver = (left: readonly number[], seen: readonly (number | null)[]): boolean =>
    !columns.some(
      (_, column) =>
        seen[column] === null &&
        canCome(column, left, seen) &&
        left.some((one) =>
          left.some(
            (other) =>
              rows[one]?.fault !== rows[other]?.fault &&
              rows[one]?.cells[column] !== null &&
              rows[other]?.cells[column] !== null &&
              supportOf(rows[one]?.cells[column] ?? null) !== supportOf(rows[other]?.cells[column] ?? null),
          ),
        ),
    );

  return least(
    rows.map(({ weight }) => weight / total),
    columns.map(() => null),
  );
}

/** The band of a check of which nobody says anything: whatever is asked of it is met. */
const anything = -1;

const isMet = (bands: readonly number[], band: number): boolean => band === anything || bands.includes(band);

/** Rows that say nothing go along with the others; alone they allow everything. */
function allows(cells: readonly Cell[], bands: readonly number[]): boolean {
  const spoken = cells.filter((cell) => cell !== null);
  return spoken.length === 0 || spoken.some((cell) => bands.some((band) => likely(cell, band) > 0));
}

const bandsOf = (cell: Cell): readonly number[] =>
  cell === null
    ? []
    : typeof cell === 'number'
      ? [cell]
      : cell.flatMap(({ band, share }) => (share > 0 ? [band] : []));

const supportOf = (cell: Cell): string => [...bandsOf(cell)].sort().join();

const likely = (cell: Cell, band: number): number =>
  cell === null
    ? 0
    : typeof cell === 'number'
      ? Number(cell === band)
      : cell.reduce((sum, one) => (one.band === band ? sum + one.share : sum), 0);
