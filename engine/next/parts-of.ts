import { bandsOf } from '../scale/index.ts';
import type { Check } from './check.ts';
import type { Proposal } from './proposal.ts';
import type { Tables } from './tables.ts';

const most = 6;
/** A suspect that is moved by less than this, in bits times its share, is not worth a line. */
const leastWorth = 1e-3;

/** The hypotheses that a check would move most, and the band that each makes likeliest. What one is moved by is its share
 *  times how far what it shows lies from what is to be expected at large (Kullback and Leibler's measure). */
export function partsOf(tables: Tables, at: number, check: Check, bands: Float64Array): Proposal['parts'] {
  const { start, width, likely, shares, places } = tables;
  const from = start[at] as number;
  const end = start[at + 1] as number;
  const moved: { row: number; worth: number }[] = [];
  for (let row = 0; row < shares.length; row += 1) {
    let worth = 0;
    for (let column = from; column < end; column += 1) {
      const share = likely[row * width + column] as number;
      if (share > 0) worth += share * Math.log2(share / (bands[column] as number));
    }
    worth *= shares[row] as number;
    if (worth > leastWorth) moved.push({ row, worth });
  }
  const names = bandsOf(check.reading);
  return moved
    .sort((a, b) => b.worth - a.worth)
    .slice(0, most)
    .map(({ row }) => {
      const shown = likely.subarray(row * width + from, row * width + end);
      const likeliest = shown.reduce(
        (best, share, band) => (share > (shown[best] as number) ? band : best),
        0,
      );
      return { hypothesis: places[row] as number, band: names[likeliest] ?? '' };
    });
}
