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
  const names = bandsOf(check.reading);
  const from = start[at] as number;
  const moved = places.map((hypothesis, row) => {
    let worth = 0;
    let best = 0;
    for (let band = 0; band < names.length; band += 1) {
      const share = likely[row * width + from + band] as number;
      if (share > 0) worth += share * Math.log2(share / (bands[from + band] as number));
      if (share > (likely[row * width + from + best] as number)) best = band;
    }
    return { hypothesis, band: names[best] ?? '', worth: worth * (shares[row] as number) };
  });
  return moved
    .filter(({ worth }) => worth > leastWorth)
    .toSorted((a, b) => b.worth - a.worth)
    .slice(0, most)
    .map(({ hypothesis, band }) => ({ hypothesis, band }));
}
