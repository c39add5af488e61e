import type { Span } from '../../model/span.ts';
import { both } from './not-a-pair.ts';
import { applied, quote } from './quote.ts';
import type { Remedy } from './trouble.ts';
import { lineAt, valueAt } from './value-at.ts';

/** `expect: >= 4 V`: YAML takes the `>` for the beginning of a block of text. */
export function leadingGreater({ from }: Span, text: string): Remedy | null {
  const value = valueAt(text, from);
  if (value === null) return null;
  const [, amount] = /^>=?[ \t]*(\S.*)$/.exec(text.slice(value.from, value.to)) ?? [];
  if (amount === undefined) return null;
  const isLimit = /\bexpect[ \t]*:/.test(text.slice(lineAt(text, from).from, value.from));
  const edits = isLimit
    ? [{ from: value.from, to: value.to - amount.length, insert: 'at least ' }]
    : quote(text, value);
  const instead = applied(text, edits, value);
  return {
    facts: { code: 'leading-greater', text: text.slice(value.from, value.to), instead },
    span: value,
    ...both(isLimit ? `Write "${instead}"` : 'Put the text in quotes', edits),
  };
}
