import type { Given } from '../model/compiled-tree.ts';
import type { Fault } from '../model/fault.ts';
import type { Reading } from '../model/reading.ts';
import { writtenShares } from './written-shares.ts';

const known = new WeakMap<readonly Given[], WeakMap<Fault, Fault>>();

/** A fault on a board that was brought with this symptom. What its author does not know (`rest: unknown`) it shows as the symptom says,
 *  or the board would not be here; else readings that everybody shows would count against it. */
export function asBrought(
  fault: Fault,
  { readings, given = [] }: { readonly readings: readonly Reading[]; readonly given?: readonly Given[] },
): Fault {
  if (fault.rest !== 'unknown' || given.length === 0) return fault;
  const ofSymptom = known.get(given) ?? new WeakMap<Fault, Fault>();
  known.set(given, ofSymptom);
  const before = ofSymptom.get(fault);
  if (before !== undefined) return before;
  const made = withSymptom(fault, readings, given);
  ofSymptom.set(fault, made);
  return made;
}

function withSymptom(fault: Fault, all: readonly Reading[], given: readonly Given[]): Fault {
  const readings = new Map(all.map((reading) => [reading.id, reading]));
  const shown = given.filter(({ reading }) => {
    const found = readings.get(reading);
    return found !== undefined && writtenShares(found, readings, fault) === null;
  });
  if (shown.length === 0) return fault;
  const shows = shown.map(({ reading, band }) => ({ reading, shares: [{ band, share: 1 }] }));
  return { ...fault, shows: [...fault.shows, ...shows] };
}
