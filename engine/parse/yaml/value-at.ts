import type { Span } from '../../model/span.ts';
import { openAt } from './open-at.ts';

/** The value that the author meant at an offset: from behind the key to the end of the line, or inside
 *  brackets to the next comma or closing bracket. Null where there is none.
 *
 *      is: "Swap" the chip   # by hand
 *          └─────────────┘
 */
export function valueAt(text: string, at: number): Span | null {
  return flowValueAt(text, at) ?? lineValueAt(text, at);
}

function lineValueAt(text: string, at: number): Span | null {
  const { from, to } = lineAt(text, at);
  const line = text.slice(from, to);
  const start = valueStart(line);
  const comment = line.slice(start).search(/(?:^|[ \t])#(?=[ \t]|$)/);
  const value = (comment < 0 ? line.slice(start) : line.slice(start, start + comment)).trimEnd();
  return value === '' ? null : { from: from + start, to: from + start + value.length };
}

/** Behind the list marks and the first key of a line. */
function valueStart(line: string): number {
  const marks = /^[ \t]*(?:-[ \t]+)*/.exec(line)?.[0].length ?? 0;
  const quoted = /^(?:"(?:[^"\\]|\\.)*"|'(?:[^']|'')*')[ \t]*(?::(?=[ \t]|$))?/.exec(line.slice(marks))?.[0];
  const colon = quoted === undefined ? line.slice(marks).search(/:(?=[ \t]|$)/) : quoted.length - 1;
  const key = quoted?.endsWith(':') === false || colon < 0 ? 0 : colon + 1;
  const space = /^[ \t]*/.exec(line.slice(marks + key))?.[0].length ?? 0;
  return marks + key + space;
}

function flowValueAt(text: string, at: number): Span | null {
  const flow = openAt(text, at).flows.at(-1);
  if (flow === undefined) return null;
  const start = flow.value + (/^\s*/.exec(text.slice(flow.value))?.[0].length ?? 0);
  const length = text.slice(start).search(/[,}\]\r\n]/);
  const value = (length < 0 ? text.slice(start) : text.slice(start, start + length)).trimEnd();
  return value === '' ? null : { from: start, to: start + value.length };
}

export function lineAt(text: string, at: number): Span {
  const from = Math.max(text.lastIndexOf('\n', at - 1), text.lastIndexOf('\r', at - 1)) + 1;
  const length = text.slice(from).search(/[\r\n]/);
  return { from, to: length < 0 ? text.length : from + length };
}

/** The line at `at` without the space around its words. */
export function wordsAt(text: string, at: number): Span {
  const line = lineAt(text, at);
  const words = text.slice(line.from, line.to);
  const from = line.to - words.trimStart().length;
  return { from, to: Math.max(from, line.from + words.trimEnd().length) };
}
