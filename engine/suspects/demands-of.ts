import type { Fault } from '../model/fault.ts';
import type { Need, Reading } from '../model/reading.ts';
import { writtenShares } from './written-shares.ts';

/**
 * What must come out how under a fault for a reading not to be hidden. Null where it is hidden whatever comes out.
 *
 *      post_code ──needs──▶ cpu_clk: good ──needs──▶ v33: good
 *
 * A fault that shows `v33: low` breaks both. What a fault shows explicitly ends the chain: a clock that it says is
 * good is good, whatever the clock needs. What is computed ends it too: its bands follow from its own inputs.
 */
export function demandsOf(
  reading: Reading,
  readings: ReadonlyMap<string, Reading>,
  fault: Fault,
): readonly Need[] | null {
  const demands = new Map<string, Need>();
  return collect(reading, readings, fault, demands, new Set()) ? [...demands.values()] : null;
}

/** False where a healthy board does not meet a need either, so that nothing the fault shows could open it. */
function collect(
  reading: Reading,
  readings: ReadonlyMap<string, Reading>,
  fault: Fault,
  demands: Map<string, Need>,
  seen: Set<string>,
): boolean {
  // A circle of needs is reported elsewhere; here it must only come to an end.
  if (seen.has(reading.id)) return true;
  seen.add(reading.id);
  for (const need of reading.needs) {
    const needed = readings.get(need.reading);
    if (needed === undefined) continue;
    if (needed.from !== null || writtenShares(needed, readings, fault) !== null) {
      const earlier = demands.get(needed.id)?.bands;
      const bands = earlier?.filter((band) => need.bands.includes(band)) ?? need.bands;
      demands.set(needed.id, { reading: needed.id, bands });
    } else if (!isMetAtRest(needed, need.bands, fault) || !collect(needed, readings, fault, demands, seen)) {
      return false;
    }
  }
  return true;
}

/** Whether a reading that the fault does not mention has one of `bands` while it is open itself. */
const isMetAtRest = (needed: Reading, bands: readonly string[], fault: Fault): boolean =>
  fault.rest === 'unknown' || needed.normal === 'any' || needed.normal.some((band) => bands.includes(band));
