import type { BoardCondition } from '../model/compiled-tree.ts';
import type { Path } from '../model/front-matter.ts';
import type { Span } from '../model/span.ts';
import { nearest } from '../names/nearest.ts';
import type { FactsContext } from './facts-context.ts';
import { placeInText } from './place-in-text.ts';
import { listOf, textOf } from './raw.ts';

/** `cards out, cpu out`, or a list of such. */
export function readWhen(
  raw: unknown,
  path: Path,
  conditions: readonly BoardCondition[],
  context: FactsContext,
): Readonly<Record<string, string>> {
  const texts = Array.isArray(raw)
    ? listOf(raw).map((text, index) => ({ text: textOf(text), path: [...path, index] }))
    : [{ text: textOf(raw), path }];
  const pairs = texts.flatMap(({ text, path: place }) =>
    text === null
      ? []
      : partsOf(text, context.spanOf(place)).map((part) => pairOf(part, conditions, context)),
  );
  return Object.fromEntries(pairs.flatMap((pair) => (pair === null ? [] : [pair])));
}

interface Part {
  readonly text: string;
  readonly span: Span;
}

/** What stands between the commas. */
const partsOf = (text: string, whole: Span): readonly Part[] =>
  [...text.matchAll(/[^,]+/g)].map(({ 0: part, index }) => {
    const word = part.trim();
    const from = index + part.indexOf(word);
    const span = placeInText(text, whole, { from, to: from + word.length });
    return { text: word, span: span ?? whole };
  });

function pairOf(
  { text, span }: Part,
  conditions: readonly BoardCondition[],
  context: FactsContext,
): readonly [string, string] | null {
  const [, name, value] = /^(\S+)\s+(\S+)$/.exec(text) ?? [];
  if (name === undefined || value === undefined) {
    context.at(span, { code: 'when-form', text });
    return null;
  }
  const condition = conditions.find(({ id }) => id === name);
  if (condition === undefined) {
    const near = nearest(
      name.slice(0, 60),
      conditions.map(({ id }) => id),
    );
    context.at(span, { code: 'no-condition-named', name, near });
    return null;
  }
  const { values } = condition;
  if (values.includes(value)) return [name, value];
  context.at(span, {
    code: 'no-value-named',
    name,
    value,
    values,
    near: nearest(value.slice(0, 60), values),
  });
  return null;
}
