import procedureSchema from '../../schema/procedure.schema.json' with { type: 'json' };
import type { Staged } from '../diagnostics/staged.ts';
import { type ForeignFacts, noForeignFacts } from '../model/foreign-facts.ts';
import type { FrontMatter } from '../model/front-matter.ts';
import type { ProcedureFacts } from '../model/procedure-facts.ts';
import { FactsContext } from './facts-context.ts';
import { textOf } from './raw.ts';
import { readDeclared } from './read-declared.ts';
import { readEnds } from './read-ends.ts';
import { readParameters } from './read-parameters.ts';
import { standIns } from './stand-ins.ts';
import { validateShape } from './validate-shape.ts';

/** What the front-matter of a procedure declares. Its readings may name parameters: readings in `needs`, `only if` and
 *  `from`, quantities in limits.
 *  @param foreign what is known from other files; it comes first in what is handed on */
export function readProcedureFacts(
  front: FrontMatter,
  foreign: ForeignFacts = noForeignFacts,
): Staged<ProcedureFacts> {
  const context = new FactsContext(front);
  const data = validateShape(front, context, procedureSchema);
  const takes = readParameters(data, foreign, context);
  const declared = readDeclared(data, foreign, context, standIns(takes));
  const { minutes, conditions, settings, readings } = declared;
  const value: ProcedureFacts = {
    title: textOf(data.title) ?? '',
    minutes,
    takes,
    ends: readEnds(data, context),
    conditions,
    settings,
    readings,
    foreign: declared.foreign,
  };
  return { value, diagnostics: context.diagnostics };
}
