import type { Span } from '../model/span.ts';
import { lineOf } from './line-and-column.ts';
import { printable } from './printable.ts';

const widest = 100;

/**
 * The line a span begins in, and carets under the span.
 *
 *     12 |   expect: >= 4 V
 *        |           ^^^^^^
 *
 * A long line is cut around the span. Tabs are kept in both lines; characters that take two columns in a terminal get
 * two carets, and those that take none get none.
 */
export function excerpt(text: string, { from, to }: Span): string {
  const line = lineOf(text, from);
  const start = Math.min(from, line.to);
  const end = Math.max(start, Math.min(to, line.to));
  const cutFrom = start - line.from > widest - 20 ? charStart(text, start - 20) : line.from;
  const cutTo = Math.min(line.to, charStart(text, cutFrom + widest));
  const before = (cutFrom > line.from ? '…' : '') + text.slice(cutFrom, start);
  const marked = text.slice(start, Math.min(end, cutTo));
  const after = text.slice(Math.min(end, cutTo), cutTo) + (cutTo < line.to ? '…' : '');
  const gutter = String(line.number);
  const shown = printable(before + marked + after);
  const carets = blanks(before) + '^'.repeat(Math.max(1, columns(marked)));
  return `${gutter} | ${shown}\n${' '.repeat(gutter.length)} | ${carets}`;
}

/** Not in the middle of a pair of surrogates. */
const charStart = (text: string, at: number): number =>
  /[\uDC00-\uDFFF]/.test(text.charAt(at)) ? at - 1 : at;

const blanks = (text: string): string =>
  text
    .split('\t')
    .map((part) => ' '.repeat(columns(part)))
    .join('\t');

const zeroWidth = /[\p{Mn}\p{Me}\u200B-\u200F\u2060\uFEFF]/u;
const doubleWidth =
  /[\u1100-\u115F\u2E80-\u303E\u3041-\uA4CF\uAC00-\uD7A3\uF900-\uFAFF\uFE30-\uFE6F\uFF00-\uFF60\uFFE0-\uFFE6]|\p{Emoji_Presentation}|[\u{20000}-\u{3FFFD}]/u;

/** How many columns a terminal needs for a text. */
const columns = (text: string): number =>
  [...text].reduce(
    (sum, character) => sum + (zeroWidth.test(character) ? 0 : doubleWidth.test(character) ? 2 : 1),
    0,
  );
