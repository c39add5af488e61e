import type { Diagnostic, Fix } from '../diagnostics/diagnostic.ts';
import type { Slice } from '../model/source.ts';
import type { Span } from '../model/span.ts';
import { type Line, linesOf } from './lines-of.ts';

const byteOrderMark = '\uFEFF';
const mark = /^---[ \t]*$/;
/** What editors and hands make of the mark: `----`, `—`, ` ---`, `--- yaml`. */
const nearMark = /^[ \t]*(?:-{2,}|[–—―]+)[ \t]*(?:#.*|yaml)?$/;
const fact = /^(?:"[^"]*"|'[^']*'|[\p{L}_][\p{L}\p{N}_ -]*):(?:[\s\u00A0]|$)/u;
/** A line that may stand among facts: a key, something indented, a list item, a comment, a closing bracket, nothing. */
const factual = /^(?:\s|#|-\s|[}\]]|$)/;

export interface CutFrontMatter {
  readonly front: Slice | null;
  readonly bodyFrom: number;
}

export type CutFile = (text: string, diagnostics: Diagnostic[]) => CutFrontMatter;

/**
 * Cuts the facts off the body.
 *
 *     ---            first line, perhaps behind a byte order mark
 *     format: 1      ← front
 *     ---
 *                    ← bodyFrom
 *
 * A missing mark is reported with a fix, and the facts are looked for where they probably are.
 */
export function cutFrontMatter(text: string, diagnostics: Diagnostic[]): CutFrontMatter {
  const start = text.startsWith(byteOrderMark) ? 1 : 0;
  const opening = openingOf(text, start, diagnostics);
  if (opening === null) return { front: null, bodyFrom: start };
  const closing = closingOf(text, opening, diagnostics);
  return { front: { text: text.slice(opening, closing.from), from: opening }, bodyFrom: closing.next };
}

/** Where the facts begin, or null if there are none. */
function openingOf(text: string, start: number, diagnostics: Diagnostic[]): number | null {
  let first: Line | null = null;
  for (const line of linesOf(text, start)) {
    if (content(text, line).trim() === '') continue;
    first = line;
    break;
  }
  const span = { from: first?.from ?? start, to: first?.to ?? start };
  const words = first === null ? '' : content(text, first);
  if (first !== null && mark.test(words)) {
    if (first.from === start) return first.next;
    const fix = edit('Take away what stands above "---"', { from: start, to: first.from }, '');
    diagnostics.push({ code: 'front-matter-start', found: 'blank lines', span, fix });
    return first.next;
  }
  if (first !== null && nearMark.test(words) && beginsWithFact(text, first.next)) {
    const fix = edit('Write "---"', { from: start, to: first.to }, '---');
    diagnostics.push({ code: 'front-matter-start', found: 'another mark', span, fix });
    return first.next;
  }
  if (fact.test(words)) {
    const fix = edit('Put "---" above', { from: start, to: start }, `---${lineEnding(text)}`);
    diagnostics.push({ code: 'front-matter-start', found: 'facts', span, fix });
    return start;
  }
  diagnostics.push({ code: 'front-matter-start', found: 'nothing', span });
  return null;
}

/** The line that ends the facts; an empty one where it is missing. */
function closingOf(text: string, opening: number, diagnostics: Diagnostic[]): Line {
  let lastFact = opening;
  let heading: Line | null = null;
  let near: Line | null = null;
  for (const line of linesOf(text, opening)) {
    const words = content(text, line);
    if (mark.test(words) && (heading === null || !leavesFacts(text, heading.next, line.from))) return line;
    if (heading === null && nearMark.test(words)) near ??= line;
    else if (fact.test(words)) {
      lastFact = line.next;
      heading = null;
    } else if (/^#{1,6} /.test(words)) heading ??= line;
    else if (!factual.test(words)) break;
    else if (heading === null && words.trim() !== '') lastFact = line.next;
  }
  if (near !== null) {
    const fix = edit('Write "---"', near, '---');
    diagnostics.push({
      code: 'front-matter-end',
      found: 'another mark',
      span: { from: near.from, to: near.to },
      fix,
    });
    return near;
  }
  const at = heading?.from ?? lastFact;
  const fix = edit('Put "---" here', { from: at, to: at }, `---${lineEnding(text)}`);
  diagnostics.push({ code: 'front-matter-end', found: 'nothing', span: wordsAt(text, at), fix });
  return { from: at, to: at, next: at };
}

/** Whether the lines between are no facts, so that what looks like a comment above them is the title. */
function leavesFacts(text: string, from: number, to: number): boolean {
  for (const line of linesOf(text, from, to)) {
    const words = content(text, line);
    if (!factual.test(words) && !fact.test(words)) return true;
  }
  return false;
}

const beginsWithFact = (text: string, from: number): boolean => {
  const [line] = linesOf(text, from);
  return line !== undefined && fact.test(content(text, line));
};

const content = (text: string, line: Line): string => text.slice(line.from, line.to);

const lineEnding = (text: string): string => (text.includes('\r\n') ? '\r\n' : '\n');

const edit = (title: string, { from, to }: Span, insert: string): Fix => ({
  title,
  edits: [{ from, to, insert }],
});

/** The line at `at`; at the end of the file, the place itself. */
function wordsAt(text: string, at: number): Span {
  const [line] = linesOf(text, at);
  return line === undefined ? { from: at, to: at } : { from: line.from, to: line.to };
}
