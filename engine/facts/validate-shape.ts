import { Ajv2020, type ErrorObject } from 'ajv/dist/2020.js';
import treeSchema from '../../schema/tree.schema.json' with { type: 'json' };
import type { FrontMatter } from '../model/front-matter.ts';
import type { FactsContext } from './facts-context.ts';
import { isTable, type RawTable } from './raw.ts';
import { shapeProblem } from './shape-problem.ts';

/** One for all kinds of files: what they take over from the schema of trees is compiled once. A schema itself is compiled when a
 *  file of its kind is first met, and whether it is one is left to the tests. */
const ajv = new Ajv2020({
  allErrors: true,
  coerceTypes: true,
  verbose: true,
  strict: true,
  allowUnionTypes: true,
  strictRequired: false,
  validateSchema: false,
}).addSchema(treeSchema);

/** The front-matter with numbers where the schema asks for them; reports whatever has another shape. */
export function validateShape(
  front: FrontMatter,
  context: FactsContext,
  schema: object = treeSchema,
): RawTable {
  const data = structuredCopy(front.data);
  const check = ajv.compile(schema);
  if (!check(data)) for (const error of relevant(check.errors ?? [])) shapeProblem(error, context);
  return isTable(data) ? data : {};
}

/** `if` only says that `then` or `else` failed, which is told. Names and measures are looked at later, in words that say more; what is nearly a known key is not also missing. */
function relevant(errors: readonly ErrorObject[]): readonly ErrorObject[] {
  return errors.filter(
    ({ schemaPath, keyword }) => keyword !== 'if' && !/\/(?:oneOf|propertyNames|name)\b/.test(schemaPath),
  );
}

/** Coercion writes into what it validates. */
function structuredCopy(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(structuredCopy);
  if (!isTable(value)) return value;
  const copy: Record<string, unknown> = Object.create(null);
  for (const [key, inner] of Object.entries(value)) copy[key] = structuredCopy(inner);
  return copy;
}
