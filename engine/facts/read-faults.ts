import type { Fault, Share, Shows } from '../model/fault.ts';
import type { Path } from '../model/front-matter.ts';
import { checkBand } from './check-band.ts';
import { checkName } from './check-name.ts';
import type { FactsContext } from './facts-context.ts';
import { findReading, type Readings } from './find-reading.ts';
import { isTable, numberOf, type RawTable, tableOf, textOf, textsOf } from './raw.ts';
import { readShares } from './read-shares.ts';

export function readFaults(data: RawTable, readings: Readings, context: FactsContext): readonly Fault[] {
  const table = tableOf(data.faults);
  return context.keysOf(['faults'], table).flatMap((id): readonly Fault[] => {
    const raw = table[id];
    const path = ['faults', id];
    checkName(id, 'fault', path, 'key', context);
    return isTable(raw) ? [readFault(id, raw, path, readings, context)] : [];
  });
}

function readFault(id: string, raw: RawTable, path: Path, readings: Readings, context: FactsContext): Fault {
  return {
    id,
    is: textOf(raw.is) ?? id,
    weight: numberOf(raw.weight) ?? 1,
    weights: {},
    sets: {},
    onlyIf: [],
    which: null,
    shows: readShows(raw.shows, [...path, 'shows'], readings, context),
    rest: raw.rest === 'unknown' ? 'unknown' : 'normal',
    comes: raw.comes === 'sometimes' ? 'sometimes' : 'always',
    parts: textsOf(raw.parts),
    tools: textsOf(raw.tools),
    minutes: numberOf(raw.minutes),
    source: textOf(raw.source),
  };
}

function readShows(raw: unknown, path: Path, readings: Readings, context: FactsContext): readonly Shows[] {
  const table = tableOf(raw);
  return context.keysOf(path, table).flatMap((name): readonly Shows[] => {
    const place = [...path, name];
    const reading = findReading(name, readings, place, 'key', context);
    if (reading === null) return [];
    const has = (band: string, at: Path, part: 'key' | 'value') =>
      checkBand(reading, band, at, part, context);
    const shares: readonly Share[] = readShares(table[name], place, has, context);
    return shares.length === 0 ? [] : [{ reading: name, shares }];
  });
}
