import type { Fault } from '../model/fault.ts';
import type { Present } from '../model/present.ts';
import type { Reading } from '../model/reading.ts';
import type { Setting, SettingValue } from '../model/setting.ts';
import { possibleBands } from '../scale/index.ts';
import type { PossibleBands } from './possible-bands.ts';

interface Tree {
  readonly readings: readonly Reading[];
  readonly settings?: readonly Setting[];
}

/** What derived readings allow while every setting has its usual value. Limits that rest on a setting without one are
 *  open, and so is what a twin would show.
 *  @param fault its `sets` win over what is usual */
export function possibleUsually(tree: Tree, fault: Pick<Fault, 'sets'> | null = null): PossibleBands {
  const present: Present = {
    settings: usualValues(tree.settings ?? [], fault?.sets ?? {}),
    twins: new Map(),
  };
  const readings = new Map(tree.readings.map((reading) => [reading.id, reading]));
  const known = new Map<string, readonly string[]>();
  return (derived, inputs) => {
    const key = JSON.stringify([derived.id, ...inputs]);
    const before = known.get(key);
    if (before !== undefined) return before;
    const rows = [...inputs].flatMap(([id, bands]) => {
      const reading = readings.get(id);
      return reading === undefined ? [] : [{ reading, bands }];
    });
    const bands = possibleBands(derived, rows, present);
    known.set(key, bands);
    return bands;
  };
}

const usualValues = (
  settings: readonly Setting[],
  sets: Readonly<Record<string, SettingValue>>,
): ReadonlyMap<string, SettingValue | null> =>
  new Map(settings.map(({ id, usual }) => [id, sets[id] ?? usual]));
