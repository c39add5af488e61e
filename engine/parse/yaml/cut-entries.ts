import { linesOf } from '../../source/lines-of.ts';
import { specialSpaces } from './special-space.ts';

/** One key of the front-matter with everything under it. */
export interface Entry {
  readonly from: number;
  readonly to: number;
  /** Columns of indentation that its neighbours do not have. */
  readonly misplaced: boolean;
  /** The keys under it, where they can be parsed one by one; what stands before the first is the key itself. */
  readonly entries: readonly Entry[];
}

interface Line {
  readonly from: number;
  readonly indent: number;
  readonly words: string;
}

const indentation = new RegExp(`^[ ${specialSpaces}]*`);
/** What a new key cannot begin with: a list item, a value, a closing bracket, a tab. */
const goesOn = /^(?:[-:](?:[ \t]|$)|[}\]\t])/;
const quoted = String.raw`"(?:[^"\\]|\\.)*"|'(?:[^']|'')*'`;
const plainStart = String.raw`[^\s#"'&*!|>%@\x60{[\]},?:-]`;
const keyAlone = new RegExp(String.raw`^(?:(?:${quoted})[ \t]*|${plainStart}[^:]*):[ \t]*(?:#.*)?$`);
const key = new RegExp(String.raw`^(?:(?:${quoted})[ \t]*|${plainStart}.*?):(?:[ \t]|$)`);

/**
 * Cuts facts by key, two levels deep, without parsing them.
 *
 *     title: …        entry
 *     readings:       entry with entries
 *       v5: …
 *       v33: …
 *
 * In well-formed YAML nothing under a key stands as far left as the key, apart from list items, so that the
 * pieces mean what the whole means. In broken YAML an error stays within its piece.
 */
export const cutEntries = (text: string): readonly Entry[] => cut(contentLines(text), text.length, 2);

function cut(lines: readonly Line[], end: number, levels: number): readonly Entry[] {
  const indent = lines[0]?.indent ?? 0;
  const starts = lines.flatMap((line, index) => (index === 0 || begins(line, indent) ? [index] : []));
  return starts.map((start, place) => {
    const next = starts[place + 1] ?? lines.length;
    const to = lines[next]?.from ?? end;
    const [head, ...rest] = lines.slice(start, next) as [Line, ...Line[]];
    const entries = levels > 1 && canBeCut(head, rest[0]) ? cut(rest, to, levels - 1) : [];
    return { from: head.from, to, misplaced: head.indent !== indent, entries };
  });
}

const begins = (line: Line, indent: number): boolean => line.indent <= indent && !goesOn.test(line.words);

const canBeCut = (head: Line, below: Line | undefined): boolean =>
  below !== undefined && keyAlone.test(head.words) && below.indent > head.indent && key.test(below.words);

/** The lines that hold something besides comments. */
function contentLines(text: string): readonly Line[] {
  const lines: Line[] = [];
  for (const { from, to } of linesOf(text)) {
    const line = text.slice(from, to);
    const words = line.replace(indentation, '');
    if (words.trim() !== '' && !words.startsWith('#'))
      lines.push({ from, indent: line.length - words.length, words });
  }
  return lines;
}
