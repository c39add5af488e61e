import type { Fault } from '../model/fault.ts';
import type { Path } from '../model/front-matter.ts';
import { checkName } from './check-name.ts';
import type { FactsContext } from './facts-context.ts';
import { joinDeclared } from './join-declared.ts';
import { nearFamilies } from './near-families.ts';
import { type Nameable, needsOf } from './needs-of.ts';
import { isTable, numberOf, type RawTable, tableOf, textOf, textsOf } from './raw.ts';
import { readBrings } from './read-brings.ts';
import { readFamily } from './read-family.ts';
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
  const ids = context.keysOf(['faults'], table);
  const named = { ...names, faults: new Set([...foreign.map(({ id }) => id), ...ids]) };
  const own = ids.flatMap((id): readonly Fault[] => {
    const raw = table[id];
    const path = ['faults', id];
    checkName(id, 'fault', path, 'key', context);
    return isTable(raw) ? [readFault(id, raw, path, named, context)] : [];
  });
  nearFamilies(foreign, own, context);
  return joinDeclared(foreign, own, 'fault', context);
}

interface FaultsToo extends FaultNames {
  readonly faults: ReadonlySet<string>;
}

function readFault(id: string, raw: RawTable, path: Path, names: FaultsToo, context: FactsContext): Fault {
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
    ...readBrings(id, raw.brings, [...path, 'brings'], names.faults, context),
    ...readFamily(raw.family, [...path, 'family'], context),
  };
}
