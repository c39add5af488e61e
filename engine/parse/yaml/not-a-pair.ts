import type { Span } from '../../model/span.ts';
import type { Edit } from './edited-text.ts';
import { insertion } from './quote.ts';
import { nameOfSpace, specialSpaces } from './special-space.ts';
import type { Remedy } from './trouble.ts';
import { lineAt } from './value-at.ts';

const glued = new RegExp(`^([^\\s:"'{}[\\],#${specialSpaces}]+):(?:([${specialSpaces}])|(?!//)\\S)`);

/** `unit:V` or `unit:` and a space that YAML does not know; null where the text is neither. */
export function colonWithoutSpace({ from }: Span, text: string): Remedy | null {
  const start = from + (/^\s*/.exec(text.slice(from))?.[0].length ?? 0);
  const line = lineAt(text, start);
  const [, key = '', space] = glued.exec(text.slice(start, line.to)) ?? [];
  if (key === '') return null;
  const colon = start + key.length;
  if (space !== undefined) {
    const span = { from: colon + 1, to: colon + 2 };
    const edits = [{ ...span, insert: ' ' }];
    return {
      facts: { code: 'special-space', name: nameOfSpace(space) },
      span,
      ...both('Write a plain space', edits),
    };
  }
  const edits = [insertion(colon + 1, ' ')];
  const span = { from: start, to: colon + 1 };
  return {
    facts: { code: 'space-after-colon', text: `${key}:` },
    span,
    ...both('Put a space after the colon', edits),
  };
}

/** A line that is no `key: value`. */
export function notAPair({ from }: Span, text: string, repair?: readonly Edit[]): Remedy {
  const line = lineAt(text, from);
  const span = { from, to: from + text.slice(from, line.to).trimEnd().length };
  const words = text.slice(span.from, span.to);
  return { facts: { code: 'not-a-pair', text: words }, span, repair: repair ?? [{ ...span, insert: '' }] };
}

/** A change that is both offered and made. */
export const both = (title: string, edits: readonly Edit[]) => ({ fix: { title, edits }, repair: edits });
