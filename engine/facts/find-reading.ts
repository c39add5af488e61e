import type { Path } from '../model/front-matter.ts';
import type { Reading } from '../model/reading.ts';
import { nearest } from '../names/nearest.ts';
import type { FactsContext } from './facts-context.ts';

export type Readings = ReadonlyMap<string, Reading>;

/** The reading of that name; told if there is none. */
export function findReading(
  name: string,
  readings: Readings,
  path: Path,
  part: 'key' | 'value',
  context: FactsContext,
): Reading | null {
  const found = readings.get(name);
  if (found !== undefined) return found;
  const near = nearest(name.slice(0, 60), readings.keys());
  context.at(context.spanOf(path, part), { code: 'no-reading-named', name, near });
  return null;
}
