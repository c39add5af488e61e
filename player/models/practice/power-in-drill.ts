import type { Drill } from '../../../engine/practice/drill.ts';

/** How the power stood for the last reading that asked for a state; null before the first. */
export function powerInDrill({ tree, events }: Drill): 'on' | 'off' | null {
  for (const event of events.toReversed()) {
    if (event.kind !== 'measured') continue;
    const power = tree.readings.find(({ id }) => id === event.reading)?.power ?? null;
    if (power !== null) return power;
  }
  return null;
}
