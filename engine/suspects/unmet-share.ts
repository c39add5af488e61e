import type { Fault } from '../model/fault.ts';
import type { Reading } from '../model/reading.ts';

/**
 * In which share of the cases a fault takes away something that `reading` needs, from 0 to 1.
 *
 *      post_code ──needs──▶ cpu_clk: good ──needs──▶ v33: good
 *
 * A fault that shows `v33: low` breaks both. What a fault shows explicitly ends the chain: a clock that it says is
 * good is good, whatever the clock needs. Different readings of one fault are taken as independent;
 * several needs of the same reading are one.
 */
export function unmetShare(reading: Reading, readings: ReadonlyMap<string, Reading>, fault: Fault): number {
  const demands = new Map<string, readonly string[]>();
  if (!collect(reading, readings, fault, demands, new Set())) return 1;
  let met = 1;
  for (const [id, bands] of demands) met *= shareWithin(fault, id, bands);
  return met > 1 - 1e-9 ? 0 : 1 - met;
}

/** Gathers the bands that readings written in `shows` must have for `reading` to be open. False where a
 *  healthy board does not meet a need either, so that nothing the fault shows could open it. */
function collect(
  reading: Reading,
  readings: ReadonlyMap<string, Reading>,
  fault: Fault,
  demands: Map<string, readonly string[]>,
  seen: Set<string>,
): boolean {
  // A circle of needs is reported elsewhere; here it must only come to an end.
  if (seen.has(reading.id)) return true;
  seen.add(reading.id);
  for (const need of reading.needs) {
    const needed = readings.get(need.reading);
    if (needed === undefined) continue;
    if (fault.shows.some((shows) => shows.reading === needed.id)) {
      const earlier = demands.get(needed.id);
      demands.set(needed.id, earlier?.filter((band) => need.bands.includes(band)) ?? need.bands);
    } else if (!isMetAtRest(needed, need.bands, fault) || !collect(needed, readings, fault, demands, seen)) {
      return false;
    }
  }
  return true;
}

/** Whether a reading that the fault does not mention has one of `bands` while it is open itself. */
const isMetAtRest = (needed: Reading, bands: readonly string[], fault: Fault): boolean =>
  fault.rest === 'unknown' || needed.normal === 'any' || needed.normal.some((band) => bands.includes(band));

const shareWithin = (fault: Fault, reading: string, bands: readonly string[]): number =>
  (fault.shows.find((shows) => shows.reading === reading)?.shares ?? [])
    .filter(({ band }) => bands.includes(band))
    .reduce((sum, { share }) => sum + share, 0);
