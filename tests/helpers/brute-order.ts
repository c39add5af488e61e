import type { Cell, Matrix } from '../../engine/figures/order/matrix.ts';

/** The least expected minutes of any order, tried out in full: every check that may be taken next, and all that it can show. Keeps what
 *  was worked out for the same bands seen, and knows no bound. Rows that say nothing are not for it. */
export function bruteOrder({ rows, columns }: Matrix): number {
  const total = rows.reduce((sum, { weight }) => sum + weight, 0);
  const known = new Map<string, number>();

  const least = (weights: readonly number[], seen: readonly (number | null)[]): number => {
    const key = seen.join();
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
    const bands = new Set(rows.flatMap(({ cells }) => bandsOf(cells[column] ?? null)));
    for (const band of bands) {
      const then = weights.map((weight, row) => weight * likely(rows[row]?.cells[column] ?? null, band));
      if (then.some((weight) => weight > 0)) cost += least(then, seen.with(column, band));
    }
    return cost;
  };

  const mayBeTaken = (column: number, seen: readonly (number | null)[]): boolean => {
    const { after = [], only = [] } = columns[column] ?? {};
    return (
      seen[column] === null &&
      after.every((earlier) => seen[earlier] !== null) &&
      only.every((need) => seen[need.column] !== null && need.bands.includes(seen[need.column] as number))
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
            left.some((row) => bands.some((band) => likely(rows[row]?.cells[earlier] ?? null, band) > 0))
          : bands.includes(seen[earlier] as number),
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
              supportOf(rows[one]?.cells[column] ?? null) !== supportOf(rows[other]?.cells[column] ?? null),
          ),
        ),
    );

  return least(
    rows.map(({ weight }) => weight / total),
    columns.map(() => null),
  );
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
