import type { Given } from '../model/compiled-tree.ts';
import type { Fault, Share } from '../model/fault.ts';
import type { Odds } from '../model/odds.ts';
import type { Reading } from '../model/reading.ts';
import { bandsOf, normalBandsOf } from '../scale/index.ts';
import { even } from './shares-at-rest.ts';

/** A board that has nothing. */
export const healthy: Fault = {
  id: '',
  is: '',
  weight: 0,
  weights: {},
  shows: [],
  rest: 'normal',
  comes: 'always',
  sets: {},
  onlyIf: [],
  which: null,
  parts: [],
  tools: [],
  minutes: null,
  source: null,
};

/** What a board shows that has none of the faults of its tree, written down as if it were a fault. Nothing is known of it, so each
 *  reading comes out on its own, whatever it is `like` or needs: normal with the share that the tree gives, split evenly among the
 *  normal bands, the rest evenly among the others. Computed readings say nothing: every band is as likely as another that what was
 *  read allows. The symptom it does show, or it would not have been brought. */
export function unlistedFault(
  readings: readonly Reading[],
  given: readonly Given[],
  { unlistedNormal }: Odds,
): Fault {
  const symptom = new Map(given.map(({ reading, band }) => [reading, band]));
  const taken = readings.filter(({ from }) => from === null);
  return {
    ...healthy,
    shows: taken.map((reading) => {
      const band = symptom.get(reading.id);
      return {
        reading: reading.id,
        shares: band === undefined ? sharesIn(reading, unlistedNormal) : [{ band, share: 1 }],
      };
    }),
  };
}

function sharesIn(reading: Reading, unlistedNormal: number): readonly Share[] {
  const bands = bandsOf(reading);
  const normal = normalBandsOf(reading);
  const others = bands.length - normal.length;
  if (normal.length === 0 || others === 0) return even(bands);
  return bands.map((band) => ({
    band,
    share: normal.includes(band) ? unlistedNormal / normal.length : (1 - unlistedNormal) / others,
  }));
}
