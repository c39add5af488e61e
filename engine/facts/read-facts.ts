import type { Staged } from '../diagnostics/staged.ts';
import { type ForeignFacts, noForeignFacts } from '../model/foreign-facts.ts';
import type { FrontMatter } from '../model/front-matter.ts';
import type { TreeFacts } from '../model/tree-facts.ts';
import { FactsContext } from './facts-context.ts';
import { textOf, textsOf } from './raw.ts';
import { readDeclared } from './read-declared.ts';
import { readFaults } from './read-faults.ts';
import { readGiven } from './read-given.ts';
import { readOdds } from './read-odds.ts';
import { validateShape } from './validate-shape.ts';

/** What the front-matter of a tree declares. One wrong entry loses neither the others nor its own name.
 *  @param foreign what is known from other files; it comes first in what is handed on */
export function readFacts(front: FrontMatter, foreign: ForeignFacts = noForeignFacts): Staged<TreeFacts> {
  const context = new FactsContext(front);
  const data = validateShape(front, context);
  const { broken, nameable, ...declared } = readDeclared(data, foreign, context);
  const boards = textsOf(data.boards);
  const names = {
    ...nameable,
    settings: { settings: declared.settings, broken },
    boards: boards.length > 0 ? boards : null,
  };
  const odds = readOdds(data, context);
  const value: TreeFacts = {
    title: textOf(data.title) ?? '',
    symptom: textOf(data.symptom) ?? '',
    boards,
    given: readGiven(data, nameable.readings, context),
    ...declared,
    faults: readFaults(data, foreign.faults, names, context),
    ...(odds && { odds }),
  };
  return { value, diagnostics: context.diagnostics };
}
