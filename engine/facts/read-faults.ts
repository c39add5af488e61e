import type { Fault } from '../model/fault.ts';
import type { Path } from '../model/front-matter.ts';
import { checkName } from './check-name.ts';
import type { FactsContext } from './facts-context.ts';
import { joinDeclared } from './join-declared.ts';
import { type Nameable, needsOf } from './needs-of.ts';
import { isTable, numberOf, type RawTable, tableOf, textOf, textsOf } from './raw.ts';
import { readSets } from './read-sets.ts';
import type { ReadSettings } from './read-settings.ts';
import { readShows } from './read-shows.ts';
import { readWeight } from './read-weight.ts';

/** What faults can name. */
interface FaultNames extends Nameable {
  readonly settings: ReadSettings;
  /** Board classes; null where any can be meant. */
  readonly boards: readonly string[] | null;
}

/** @param foreign those known from other files */
export function readFaults(
  data: RawTable,
  foreign: readonly Fault[],
  names: FaultNames,
  context: FactsContext,
): readonly Fault[] {
  const table = tableOf(data.faults);
  const own = context.keysOf(['faults'], table).flatMap((id): readonly Fault[] => {
    const raw = table[id];
    const path = ['faults', id];
    checkName(id, 'fault', path, 'key', context);
    return isTable(raw) ? [readFault(id, raw, path, names, context)] : [];
  });
  return joinDeclared(foreign, own, 'fault', context);
}

function readFault(id: string, raw: RawTable, path: Path, names: FaultNames, context: FactsContext): Fault {
  return {
    id,
    is: textOf(raw.is) ?? id,
    ...readWeight(raw.weight, [...path, 'weight'], names.boards, context),
    shows: readShows(raw.shows, [...path, 'shows'], names.readings, context),
    rest: raw.rest === 'unknown' ? 'unknown' : 'normal',
    comes: raw.comes === 'sometimes' ? 'sometimes' : 'always',
    sets: readSets(raw.sets, [...path, 'sets'], names.settings, context),
    onlyIf: needsOf(raw['only if'], [...path, 'only if'], names, context),
    which: textOf(raw.which),
    parts: textsOf(raw.parts),
    tools: textsOf(raw.tools),
    minutes: numberOf(raw.minutes),
    source: textOf(raw.source),
  };
}
