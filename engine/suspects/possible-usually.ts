import type { Fault } from '../model/fault.ts';
import type { Reading } from '../model/reading.ts';
import type { Setting } from '../model/setting.ts';
import { possibleAt } from './possible-at.ts';
import type { PossibleBands } from './possible-bands.ts';

interface Tree {
  readonly readings: readonly Reading[];
  readonly settings?: readonly Setting[];
}

/** What derived readings allow while every setting has its usual value. Limits that rest on a setting without one are open.
 *  @param fault its `sets` win over what is usual */
export function possibleUsually(
  { readings, settings = [] }: Tree,
  fault: Pick<Fault, 'sets'> | null = null,
): PossibleBands {
  const values = settings.map(({ id, usual }) => [id, fault?.sets[id] ?? usual] as const);
  return possibleAt(new Map(readings.map((reading) => [reading.id, reading])), new Map(values));
}
