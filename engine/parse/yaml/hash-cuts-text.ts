import { both } from './not-a-pair.ts';
import { openAt } from './open-at.ts';
import { applied, quote } from './quote.ts';
import type { Remedy, Trouble } from './trouble.ts';
import { lineAt, valueAt } from './value-at.ts';

/** `is: Reset #1 at the CPU`: a `#` behind a space begins a comment, and no comment begins like that. */
export function hashCutsText({ from, to }: Trouble, text: string): Remedy | null {
  const line = lineAt(text, from);
  if (!/^#[^\s#]/.test(text.slice(from, to)) || text.slice(line.from, from).trim() === '') return null;
  const value = valueAt(text, from);
  if (value === null || value.from > from || /^["'[{|>]/.test(text.charAt(value.from))) return null;
  const edits = quote(text, value);
  const kept = text.slice(value.from, from).trimEnd();
  if (openAt(text, from).flows.length > 0) {
    // The comment has taken the closing bracket with it.
    const facts = {
      code: 'needs-quotes',
      text: text.slice(value.from, value.to),
      instead: applied(text, edits, value),
    } as const;
    return { facts, span: value, ...both('Put the text in quotes', edits) };
  }
  const facts = { code: 'hash-cuts-text', kept, lost: text.slice(from, value.to) } as const;
  return { facts, span: { from, to: value.to }, fix: { title: 'Put the text in quotes', edits } };
}
