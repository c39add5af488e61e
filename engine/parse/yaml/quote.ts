import type { Span } from '../../model/span.ts';
import type { Edit } from './edited-text.ts';

/** The insertions that put a text in quotes: double ones, or single ones where it holds double ones. */
export function quote(text: string, { from, to }: Span): readonly Edit[] {
  const value = text.slice(from, to);
  const single = /["\\]/.test(value) && !value.includes("'");
  const mark = single ? "'" : '"';
  const escapes = single
    ? []
    : [...value.matchAll(/["\\]/g)].map(({ index }) => insertion(from + index, '\\'));
  return [insertion(from, mark), ...escapes, insertion(to, mark)];
}

export function applied(text: string, edits: readonly Edit[], { from, to }: Span): string {
  let result = '';
  let at = from;
  for (const edit of edits) {
    result += text.slice(at, edit.from) + edit.insert;
    at = edit.to;
  }
  return result + text.slice(at, to);
}

export const insertion = (at: number, insert: string): Edit => ({ from: at, to: at, insert });
