import type { Tables } from './tables.ts';

/** What each check would tell, and how likely each of its bands is. */
export interface Gains {
  /** Bits by check: how far the band that will be read and what the board has depend on each other. */
  readonly bits: Float64Array;
  /** Share of each column. */
  readonly bands: Float64Array;
}

export const emptyGains = ({ checks, width }: Tables): Gains => ({
  bits: new Float64Array(checks),
  bands: new Float64Array(width),
});

/** Rows less likely than this are passed over. */
const least = 1e-9;

/** The mutual information of every check with the hypotheses, H(band) − Σ share · H(band | hypothesis), into `gains`.
 *  @param shares of the rows; they add up to 1 */
export function gainsAt(tables: Tables, shares: Float64Array, gains: Gains): Gains {
  const { checks, width, start, likely, doubt } = tables;
  const { bits, bands } = gains;
  bits.fill(0);
  bands.fill(0);
  for (let row = 0; row < shares.length; row += 1) {
    const share = shares[row] as number;
    if (share < least) continue;
    const from = row * width;
    for (let column = 0; column < width; column += 1) {
      bands[column] = (bands[column] as number) + share * (likely[from + column] as number);
    }
    const open = row * checks;
    for (let check = 0; check < checks; check += 1) {
      bits[check] = (bits[check] as number) - share * (doubt[open + check] as number);
    }
  }
  for (let check = 0; check < checks; check += 1) {
    const end = start[check + 1] as number;
    let open = 0;
    for (let column = start[check] as number; column < end; column += 1) {
      const share = bands[column] as number;
      if (share > 0) open -= share * Math.log2(share);
    }
    bits[check] = Math.max(0, (bits[check] as number) + open);
  }
  return gains;
}

/** The shares of the rows once a check has come out in the band of `column`, into `after`.
 *  @returns how likely that band is */
export function sharesAfter(
  { width, likely }: Tables,
  shares: Float64Array,
  column: number,
  after: Float64Array,
): number {
  let sum = 0;
  for (let row = 0; row < shares.length; row += 1) {
    const share = (shares[row] as number) * (likely[row * width + column] as number);
    after[row] = share;
    sum += share;
  }
  if (sum > 0) for (let row = 0; row < shares.length; row += 1) after[row] = (after[row] as number) / sum;
  return sum;
}

/** The same of one check alone. */
export function bitsOf(tables: Tables, shares: Float64Array, check: number): number {
  const { checks, width, start, likely, doubt } = tables;
  const end = start[check + 1] as number;
  let bits = 0;
  for (let row = 0; row < shares.length; row += 1) {
    bits -= (shares[row] as number) * (doubt[row * checks + check] as number);
  }
  for (let column = start[check] as number; column < end; column += 1) {
    let band = 0;
    for (let row = 0; row < shares.length; row += 1) {
      band += (shares[row] as number) * (likely[row * width + column] as number);
    }
    if (band > 0) bits -= band * Math.log2(band);
  }
  return Math.max(0, bits);
}
