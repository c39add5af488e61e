import type { Fault } from '../model/fault.ts';
import type { Reading } from '../model/reading.ts';
import type { Section } from '../model/section.ts';
import type { TreeFacts } from '../model/tree-facts.ts';
import { inputsOf, settingsOf } from '../scale/index.ts';
import type { Beside } from './beside.ts';
import type { LinkedSection } from './linked-tree.ts';

/** The facts without those of other files that nothing here rests on: a catalogue may grow without a tree becoming
 *  another tree. What the file declares itself stays. */
export function usedFacts(
  facts: TreeFacts,
  sections: readonly LinkedSection[],
  settingsUsed: ReadonlySet<string>,
  { foreign }: Beside,
): TreeFacts {
  const [readings, settings] = [idsOf(foreign.readings), idsOf(foreign.settings)];
  const [faults, conditions] = [idsOf(foreign.faults), idsOf(foreign.conditions)];
  if (readings.size + settings.size + faults.size + conditions.size === 0) return facts;
  const met = new Set(sections.flatMap(({ section }) => faultsOf(section)));
  const keptFaults = facts.faults.filter(({ id }) => !faults.has(id) || met.has(id));
  const usedReadings = closure(facts, [
    ...sections.flatMap(({ section }) => readingsOf(section)),
    ...facts.given.map(({ reading }) => reading),
    ...keptFaults.flatMap(({ onlyIf }) => onlyIf.map(({ reading }) => reading)),
    ...facts.faults
      .filter(({ id }) => !faults.has(id))
      .flatMap(({ shows }) => shows.map(({ reading }) => reading)),
    ...facts.readings.filter(({ id }) => !readings.has(id)).map(({ id }) => id),
  ]);
  const keptReadings = facts.readings.filter(({ id }) => usedReadings.has(id));
  const usedSettings = new Set([
    ...settingsUsed,
    ...keptReadings.flatMap(settingsOf),
    ...keptFaults.flatMap(({ sets }) => Object.keys(sets)),
  ]);
  const usedConditions = new Set([
    ...sections.flatMap(({ section }) => (section.kind === 'task' ? Object.keys(section.sets) : [])),
    ...keptReadings.flatMap(({ when }) => Object.keys(when)),
  ]);
  return {
    ...facts,
    conditions: facts.conditions.filter(({ id }) => !conditions.has(id) || usedConditions.has(id)),
    settings: facts.settings.filter(({ id }) => !settings.has(id) || usedSettings.has(id)),
    readings: keptReadings,
    faults: keptFaults.map((fault) => (faults.has(fault.id) ? showing(fault, usedReadings) : fault)),
  };
}

type Ids = ReadonlySet<string>;

const idsOf = (items: readonly { readonly id: string }[]): Ids => new Set(items.map(({ id }) => id));

/** A shared fault says what it shows in every tree; here only what this one reads matters. */
const showing = (fault: Fault, readings: Ids): Fault => ({
  ...fault,
  shows: fault.shows.filter(({ reading }) => readings.has(reading)),
});

const faultsOf = (section: Section): readonly string[] =>
  section.kind === 'fault' ? section.remedies.map(({ fault }) => fault) : [];

function readingsOf(section: Section): readonly string[] {
  switch (section.kind) {
    case 'check':
      return section.readings;
    case 'task':
      return section.onlyIf.map(({ reading }) => reading);
    case 'fault':
      return [...section.proof, ...section.onlyIf.map(({ reading }) => reading)];
    case 'call':
      return [section.id];
    case 'stop':
    case 'hand-over':
      return [];
  }
}

/** The readings named, and all that these rest on. */
function closure({ readings }: TreeFacts, named: readonly string[]): Ids {
  const known = new Map(readings.map((reading) => [reading.id, reading]));
  const used = new Set(named);
  for (const id of used) {
    const reading = known.get(id);
    if (reading !== undefined) for (const name of restsOn(reading)) used.add(name);
  }
  return used;
}

const restsOn = (reading: Reading): readonly string[] => [
  ...reading.needs.map((need) => need.reading),
  ...reading.onlyIf.map((need) => need.reading),
  ...reading.after,
  ...(reading.like === null ? [] : [reading.like]),
  ...inputsOf(reading),
];
