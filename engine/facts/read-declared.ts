import type { BoardCondition } from '../model/compiled-tree.ts';
import type { ForeignFacts, ForeignNames } from '../model/foreign-facts.ts';
import type { Reading } from '../model/reading.ts';
import type { Setting } from '../model/setting.ts';
import type { FactsContext } from './facts-context.ts';
import { foreignNames } from './foreign-names.ts';
import { joinDeclared } from './join-declared.ts';
import type { Known } from './known.ts';
import type { Nameable } from './needs-of.ts';
import { onesOfMany } from './ones-of-many.ts';
import { numberOf, type RawTable } from './raw.ts';
import { readConditions } from './read-conditions.ts';
import { readNeeds } from './read-needs.ts';
import { readReadings } from './read-readings.ts';
import { readSettings } from './read-settings.ts';
import { readTools } from './read-tools.ts';

/** What stands for a caller's readings and quantities inside a procedure. */
export interface StandIns {
  readonly readings: readonly Reading[];
  readonly settings: readonly Setting[];
}

const noStandIns: StandIns = { readings: [], settings: [] };

/** What every kind of file declares, with what is known from other files before it. */
export interface DeclaredFacts {
  readonly minutes: number;
  readonly tools: readonly string[] | null;
  readonly conditions: readonly BoardCondition[];
  readonly settings: readonly Setting[];
  readonly readings: readonly Reading[];
  readonly foreign: ForeignNames;
  /** Settings that are not what the author meant. */
  readonly broken: ReadonlySet<string>;
  /** All that can be named as a reading. */
  readonly nameable: Nameable;
}

/** Hands-on minutes of a reading or task where the file gives none at all. */
const usualMinutes = 1;

export function readDeclared(
  data: RawTable,
  foreign: ForeignFacts,
  context: FactsContext,
  standIns: StandIns = noStandIns,
): DeclaredFacts {
  const minutes = numberOf(data.minutes) ?? usualMinutes;
  const tools = readTools(data, context);
  const conditions = readConditions(data, foreign.conditions, context);
  const { settings, broken } = readSettings(data, foreign, context);
  const known: Known = {
    settings: [...settings, ...standIns.settings],
    broken,
    conditions,
    tools,
    minutes,
  };
  const own = readReadings(data, foreign, known, context);
  const byId = [...foreign.readings, ...standIns.readings, ...own.readings];
  const parameters = new Set(standIns.readings.map(({ id }) => id));
  const names: Nameable = { readings: withOnes(byId, foreign), parameters };
  const complete = readNeeds(own, names, known, data, context);
  const joined = joinDeclared(foreign.readings, complete, 'reading', context);
  const readings = [...withOnes(joined, foreign).values()];
  return {
    minutes,
    tools,
    conditions,
    settings,
    readings,
    foreign: foreignNames(foreign),
    broken,
    nameable: {
      readings: new Map([...readings, ...standIns.readings].map((reading) => [reading.id, reading])),
      parameters,
    },
  };
}

/** By id, those that are one of many alike last. */
function withOnes(readings: readonly Reading[], { ones = [] }: ForeignFacts): ReadonlyMap<string, Reading> {
  const byId = new Map(readings.map((reading) => [reading.id, reading]));
  for (const one of onesOfMany(ones, byId)) byId.set(one.id, one);
  return byId;
}
