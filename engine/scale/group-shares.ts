import type { Reading } from '../model/reading.ts';
import { bandsOf } from './bands-of.ts';
import { eachBandOf } from './each-bands.ts';
import { memberReading } from './member-reading.ts';

export interface BandShare {
  readonly band: string;
  readonly share: number;
}

/** The bands of the whole of many alike, and how likely each is where its members are known by shares that do not depend
 *  on each other.
 *
 *  Members are taken one by one. What is kept of those before is only what the band of the whole depends on: which bands
 *  out of normal there are, and how many members are out of normal. So 64 members that can each be in two bands take 65
 *  steps of at most 16 × 65 states, and not 2^64 combinations. */
export function groupShares(
  reading: Reading,
  members: readonly (readonly BandShare[])[],
): readonly BandShare[] {
  const { measure } = reading;
  if (measure.kind !== 'each') return [];
  const isNormal = (band: string): boolean => measure.normal.includes(band);
  let states = new Map<string, { readonly wrong: readonly string[]; readonly share: number }>([
    ['', { wrong: [], share: 1 }],
  ]);
  for (const shares of members) {
    const next: typeof states = new Map();
    for (const { wrong, share } of states.values()) {
      for (const one of shares) {
        const found = isNormal(one.band) ? wrong : [...wrong, one.band];
        const key = `${found.length} ${[...new Set(found)].sort().join(' ')}`;
        const sofar = next.get(key);
        next.set(key, { wrong: sofar?.wrong ?? found, share: (sofar?.share ?? 0) + share * one.share });
      }
    }
    states = next;
  }
  const bandsOfOne = bandsOf(memberReading(reading));
  const totals = new Map<string, number>();
  for (const { wrong, share } of states.values()) {
    const band = eachBandOf(measure, wrong, bandsOfOne);
    totals.set(band, (totals.get(band) ?? 0) + share);
  }
  return measure.bands.flatMap((band) => {
    const share = totals.get(band);
    return share === undefined ? [] : [{ band, share }];
  });
}
