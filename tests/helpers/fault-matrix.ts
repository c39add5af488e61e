import type { Matrix } from '../../engine/figures/order/matrix.ts';

/** A matrix as it is published: a row for each fault, a band for each test; every test takes a minute where nothing else is said. */
export const faultMatrix = (
  rows: readonly { readonly weight: number; readonly bands: readonly number[] }[],
  minutes: readonly number[] = [],
): Matrix => ({
  rows: rows.map(({ weight, bands }, fault) => ({ weight, fault, cells: bands })),
  columns: (rows[0]?.bands ?? []).map((_, column) => ({ minutes: minutes[column] ?? 1 })),
});
