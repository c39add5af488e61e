import type { ErrorObject } from 'ajv/dist/2020.js';
import type { Fix } from '../diagnostics/diagnostic.ts';
import type { Shape } from '../diagnostics/front-matter-facts.ts';
import type { Path } from '../model/front-matter.ts';
import type { Span } from '../model/span.ts';
import { nearest } from '../names/nearest.ts';
import type { FactsContext } from './facts-context.ts';
import { isMisspelt } from './is-misspelt.ts';
import { isTable, tableOf } from './raw.ts';
import { renameFix } from './rename-fix.ts';

/** What the schema validator found, told at its place in the file. */
export function shapeProblem(error: ErrorObject, context: FactsContext): void {
  const path = pathOf(error.instancePath);
  (problems[error.keyword] ?? wrongShape)({ ...error, path, key: nameOf(path), context });
}

interface Finding extends ErrorObject {
  readonly path: Path;
  /** What the value is called: its key, or the key of the list it stands in. */
  readonly key: string;
  readonly context: FactsContext;
}

type Told = (finding: Finding) => void;

const wrongShape: Told = ({ path, key, context, data, parentSchema, params }) => {
  if (data === '') return context.atKey(path, { code: 'empty-value', key });
  const types = [params.type].flat().map(String);
  if (types.includes('number') || types.includes('integer')) {
    if (typeof data === 'string') return context.atValue(path, { code: 'number-wanted', key, text: data });
  }
  const expected = String(parentSchema?.description ?? 'something else');
  const facts = { code: 'wrong-shape', key, expected, found: shapeOf(data) } as const;
  return context.atValue(path, facts, bracketing(context.spanOf(path), data, types));
};

const emptyValue: Told = ({ path, key, context }) => context.atKey(path, { code: 'empty-value', key });

const numberRange: Told = ({ path, key, context, data, params }) => {
  const bound = `${bounds[params.comparison as string] ?? ''} ${params.limit}`;
  context.atValue(path, { code: 'number-range', key, number: Number(data), bound });
};

const wordWanted: Told = ({ path, key, context, data, params }) => {
  // A list or a table has been told to be no text.
  if (typeof data === 'object') return;
  const words = [params.allowedValues ?? params.allowedValue].flat().map(String);
  // Lists and tables have been told to be of the wrong shape.
  if (typeof data !== 'string' && typeof data !== 'number') return;
  const text = String(data);
  const near = nearest(text.slice(0, 60), words);
  context.atValue(
    path,
    { code: 'word-wanted', key, text, words, near },
    renameFix(context.spanOf(path), text, near),
  );
};

const problems: Readonly<Record<string, Told>> = {
  minLength: emptyValue,
  minItems: emptyValue,
  minProperties: emptyValue,
  minimum: numberRange,
  maximum: numberRange,
  exclusiveMinimum: numberRange,
  const: wordWanted,
  enum: wordWanted,
  pattern: ({ path, context, data }) => context.atValue(path, { code: 'wait-form', text: String(data) }),
  maxLength: ({ path, context, data }) =>
    context.atValue(path, { code: 'name-form', name: String(data), of: 'band', instead: null }),
  required: ({ path, context, data, params, parentSchema }) => {
    const key = String(params.missingProperty);
    if (isMisspelt(key, tableOf(data), Object.keys(parentSchema?.properties ?? {}))) return;
    context.atKey(path, { code: 'missing-key', key, of: partName(path) });
  },
  additionalProperties: ({ path, context, data, params, parentSchema }) => {
    const key = String(params.additionalProperty);
    const keys = Object.keys(parentSchema?.properties ?? {});
    const near = nearest(
      key.slice(0, 60),
      keys.filter((one) => !isTable(data) || !(one in data)),
    );
    const span = context.spanOf([...path, key], 'key');
    context.at(span, { code: 'unknown-key', key, near, keys }, renameFix(span, key, near));
  },
};

/** The fix where a list is wanted, and its only item stands there without brackets. */
function bracketing(span: Span, data: unknown, types: readonly unknown[]): { readonly fix?: Fix } {
  const isPlain =
    typeof data === 'string' && span.to - span.from === data.length && !/[[\]{}:#"']/.test(data);
  if (!isPlain || !types.join().includes('array')) return {};
  return { fix: { title: `Write "[${data}]"`, edits: [{ ...span, insert: `[${data}]` }] } };
}

const bounds: Readonly<Record<string, string>> = { '>=': 'at least', '<=': 'at most', '>': 'more than' };

/** `/readings/v5/codes/0D` as its steps. */
const pathOf = (pointer: string): Path =>
  pointer
    .split('/')
    .slice(1)
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));

const nameOf = (path: Path): string =>
  String(path.findLast((step) => !/^\d+$/.test(String(step))) ?? 'the front-matter');

const shapeOf = (data: unknown): Shape => (Array.isArray(data) ? 'list' : isTable(data) ? 'table' : 'text');

const singular: Readonly<Record<string, string>> = {
  settings: 'setting',
  readings: 'reading',
  faults: 'fault',
  takes: 'parameter',
};

/** `the reading "v5"` */
function partName(path: Path): string {
  const [group, name] = path;
  if (group === undefined) return 'the facts';
  const kind = singular[String(group)];
  if (kind === undefined || name === undefined) return `"${path.at(-1)}"`;
  return path.length > 2 ? `"${path.at(-1)}" of the ${kind} "${name}"` : `the ${kind} "${name}"`;
}
