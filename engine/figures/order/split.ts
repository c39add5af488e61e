import { anything, type Ground, silent, soft } from './ground.ts';

/** The rows that go on together where a column comes out in one band. */
export interface Part {
  readonly band: number;
  /** How likely that is. */
  readonly share: number;
  readonly rows: Int16Array;
  /** In the order of `rows`; not yet brought to a sum of 1. */
  readonly shares: Float64Array;
}

/** How a column parts the rows of a state. Rows that say nothing go along with every part, in the shares of the others. */
export function split(
  ground: Ground,
  rows: Int16Array,
  shares: Float64Array,
  column: number,
): readonly Part[] {
  const { columns, band, bands } = ground;
  const count = bands[column] as number;
  const sums = new Float64Array(count);
  const sizes = new Int32Array(count);
  let known = 0;
  let silents = 0;
  for (let at = 0; at < rows.length; at += 1) {
    const place = (rows[at] as number) * columns + column;
    const here = band[place] as number;
    const share = shares[at] as number;
    if (here === silent) {
      silents += 1;
      continue;
    }
    known += share;
    if (here !== soft) {
      sums[here] = (sums[here] as number) + share;
      sizes[here] = (sizes[here] as number) + 1;
      continue;
    }
    const cell = ground.shares[place] as Float64Array;
    for (let each = 0; each < count; each += 1) {
      const part = cell[each] as number;
      if (part === 0) continue;
      sums[each] = (sums[each] as number) + share * part;
      sizes[each] = (sizes[each] as number) + 1;
    }
  }
  if (known === 0) return [{ band: anything, share: 1, rows, shares }];
  const parts: Part[] = [];
  for (let each = 0; each < count; each += 1) {
    const size = sizes[each] as number;
    if (size === 0) continue;
    const share = (sums[each] as number) / known;
    const partRows = new Int16Array(size + silents);
    const partShares = new Float64Array(size + silents);
    let to = 0;
    for (let at = 0; at < rows.length; at += 1) {
      const row = rows[at] as number;
      const place = row * columns + column;
      const here = band[place] as number;
      const likely =
        here === silent
          ? share
          : here === soft
            ? ((ground.shares[place] as Float64Array)[each] as number)
            : here === each
              ? 1
              : 0;
      if (likely === 0) continue;
      partRows[to] = row;
      partShares[to] = (shares[at] as number) * likely;
      to += 1;
    }
    parts.push({ band: each, share, rows: partRows, shares: partShares });
  }
  return parts;
}
