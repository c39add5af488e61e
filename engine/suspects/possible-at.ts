import type { Present } from '../model/present.ts';
import type { Reading } from '../model/reading.ts';
import type { SettingValue } from '../model/setting.ts';
import { possibleBands } from '../scale/index.ts';
import type { PossibleBands } from './possible-bands.ts';

/** What derived readings allow at given settings; what a twin would show is not known. */
export function possibleAt(
  readings: ReadonlyMap<string, Reading>,
  settings: ReadonlyMap<string, SettingValue | null>,
): PossibleBands {
  const present: Present = { settings, twins: new Map() };
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
