import type { Staged } from '../diagnostics/staged.ts';
import type { FrontMatter } from '../model/front-matter.ts';
import type { TreeFacts } from '../model/tree-facts.ts';
import { FactsContext } from './facts-context.ts';
import { numberOf, textOf, textsOf } from './raw.ts';
import { readFaults } from './read-faults.ts';
import { readGiven } from './read-given.ts';
import { readNeeds } from './read-needs.ts';
import { readReadings } from './read-readings.ts';
import { readSettings } from './read-settings.ts';
import { validateShape } from './validate-shape.ts';

/** Hands-on minutes of a reading or task where the tree gives none at all. */
const usualMinutes = 1;

/** What the front-matter of a tree declares. One wrong entry loses neither the others nor its own name. */
export function readFacts(front: FrontMatter): Staged<TreeFacts> {
  const context = new FactsContext(front);
  const data = validateShape(front, context);
  const minutes = numberOf(data.minutes) ?? usualMinutes;
  const settings = readSettings(data, context);
  const alone = readReadings(data, minutes, settings, context);
  const readings = readNeeds(alone, settings.settings, data, context);
  const known = new Map(readings.map((reading) => [reading.id, reading]));
  const value: TreeFacts = {
    title: textOf(data.title) ?? '',
    symptom: textOf(data.symptom) ?? '',
    boards: textsOf(data.boards),
    minutes,
    conditions: [],
    given: readGiven(data, known, context),
    settings: settings.settings,
    readings,
    faults: readFaults(data, known, context),
  };
  return { value, diagnostics: context.diagnostics };
}
