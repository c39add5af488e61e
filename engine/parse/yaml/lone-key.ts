import { both, colonWithoutSpace, notAPair } from './not-a-pair.ts';
import { applied, quote } from './quote.ts';
import type { Remedy, Trouble } from './trouble.ts';

/** A key without a value in `{ }`: a space is missing, or a comma has cut a value in two. */
export function loneKey(trouble: Trouble, text: string): Remedy {
  const glued = colonWithoutSpace(trouble, text);
  if (glued !== null) return glued;
  const { other: value } = trouble;
  if (value === undefined) {
    const span = { from: trouble.from, to: trouble.to };
    return { ...notAPair(trouble, text, []), facts: { code: 'not-a-pair', text: trouble.message }, span };
  }
  const edits = quote(text, value);
  return {
    facts: {
      code: 'comma-in-braces',
      text: text.slice(value.from, value.to),
      instead: applied(text, edits, value),
    },
    span: { from: value.from, to: value.to },
    ...both('Put the value in quotes', edits),
  };
}
