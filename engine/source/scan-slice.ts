import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Crowd } from '../diagnostics/source-facts.ts';
import { crowds, limits } from './limits.ts';
import { linesOf } from './lines-of.ts';

const containerMark = /[ \t]*(?:>|(?:[-+*]|\d{1,9}[.)])(?=[ \t\r\n]|$))/y;

export type ScanSlice = (text: string, from: number, to: number) => readonly Diagnostic[];

/** What keeps the part of `text` from `from` to `to` from being parsed in reasonable time. */
export function scanSlice(text: string, from: number, to: number): readonly Diagnostic[] {
  const { sectionCharacters, crowd } = limits;
  const heading = { from, to: firstLineEnd(text, from, to) };
  if (to - from > sectionCharacters) {
    return [{ code: 'section-too-large', characters: to - from, limit: sectionCharacters, span: heading }];
  }
  const slice = text.slice(from, to);
  const found = [...backtickProblems(slice, from)];
  let marks = 0;
  for (const line of linesOf(text, from, to)) {
    const depth = containerDepth(text, line.from);
    marks += depth;
    if (depth > limits.depth) {
      found.push({
        code: 'nesting-too-deep',
        depth,
        limit: limits.depth,
        span: { from: line.from, to: line.to },
      });
    }
  }
  if (found.length > 0) return found;
  const counted: [Crowd, number][] = [['list and quote marks', marks]];
  for (const [what, pattern] of Object.entries(crowds))
    counted.push([what as Crowd, countOf(pattern, slice)]);
  for (const [what, count] of counted) {
    if (count > crowd) found.push({ code: 'section-too-busy', what, count, limit: crowd, span: heading });
  }
  return found;
}

function containerDepth(text: string, from: number): number {
  let depth = 0;
  containerMark.lastIndex = from;
  while (containerMark.test(text)) depth += 1;
  return depth;
}

function* backtickProblems(slice: string, from: number): Generator<Diagnostic> {
  const limit = limits.backticks;
  for (const { 0: run, index } of slice.matchAll(/`{9,}/g)) {
    const span = { from: from + index, to: from + index + run.length };
    yield { code: 'backticks-too-many', count: run.length, limit, span };
  }
}

const countOf = (pattern: RegExp, slice: string): number => {
  let count = 0;
  for (const _ of slice.matchAll(pattern)) count += 1;
  return count;
};

export function firstLineEnd(text: string, from: number, to: number): number {
  const [line] = linesOf(text, from, to);
  return line?.to ?? to;
}
