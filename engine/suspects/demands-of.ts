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
 * @param known what was worked out before under the same fault
 */
export function demandsOf(
  reading: Reading,
  readings: ReadonlyMap<string, Reading>,
  fault: Fault,
  known: Map<string, readonly Need[] | null> = new Map(),
): readonly Need[] | null {
  const before = known.get(reading.id);
  if (before !== undefined) return before;
  // A circle of needs is reported elsewhere; here it must only come to an end.
  known.set(reading.id, []);
  const demands = demandsOfNeeds(reading, readings, fault, known);
  known.set(reading.id, demands);
  return demands;
}

/** Null where a healthy board does not meet a need either, so that nothing the fault shows could open it. */
function demandsOfNeeds(
  { needs }: Reading,
  readings: ReadonlyMap<string, Reading>,
  fault: Fault,
  known: Map<string, readonly Need[] | null>,
): readonly Need[] | null {
  const demands = new Map<string, Need>();
  for (const need of needs) {
    const needed = readings.get(need.reading);
    if (needed === undefined) continue;
    const ends = needed.from !== null || writtenShares(needed, readings, fault) !== null;
    if (!ends && !isMetAtRest(needed, need.bands, fault)) return null;
    const here = ends ? [need] : demandsOf(needed, readings, fault, known);
    if (here === null) return null;
    for (const { reading, bands } of here) {
      const earlier = demands.get(reading)?.bands;
      demands.set(reading, { reading, bands: earlier?.filter((band) => bands.includes(band)) ?? bands });
    }
  }
  return [...demands.values()];
}

/** Whether a reading that the fault does not mention has one of `bands` while it is open itself. */
const isMetAtRest = (needed: Reading, bands: readonly string[], fault: Fault): boolean =>
  fault.rest === 'unknown' || needed.normal === 'any' || needed.normal.some((band) => bands.includes(band));
