import sharedSchema from '../../schema/shared.schema.json' with { type: 'json' };
import type { Staged } from '../diagnostics/staged.ts';
import { type ForeignFacts, noForeignFacts } from '../model/foreign-facts.ts';
import type { FrontMatter } from '../model/front-matter.ts';
import { FactsContext } from './facts-context.ts';
import { readDeclared } from './read-declared.ts';
import { readFaults } from './read-faults.ts';
import { validateShape } from './validate-shape.ts';

/** What a shared file gives to those that use it: what it declares, and before it what it knows from the files that it
 *  uses itself. */
export function readSharedFacts(
  front: FrontMatter,
  foreign: ForeignFacts = noForeignFacts,
): Staged<ForeignFacts> {
  const context = new FactsContext(front);
  const data = validateShape(front, context, sharedSchema);
  const { conditions, settings, readings, broken, nameable } = readDeclared(data, foreign, context);
  const names = { ...nameable, settings: { settings, broken }, boards: null };
  const faults = readFaults(data, foreign.faults, names, context);
  return { value: { conditions, settings, readings, faults }, diagnostics: context.diagnostics };
}
