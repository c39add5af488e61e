import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Slice } from '../model/source.ts';
import { limits } from './limits.ts';
import { linesOf } from './lines-of.ts';
import { firstLineEnd, type ScanSlice, scanSlice } from './scan-slice.ts';

/** The fence or HTML block that is still open at `to`, or null; its own `to` is null if it does not end
 *  before `limit`. See `openBlock` in parse. */
export type FindOpenBlock = (
  text: string,
  from: number,
  to: number,
  limit: number,
) => { readonly from: number; readonly to: number | null } | null;

/** A part of the body as it lies between two lines that begin with `## `. */
interface Part {
  readonly from: number;
  readonly to: number;
  /** Too much for a parser. */
  readonly hostile: boolean;
}

/**
 * Cuts the body at every line that begins with `## ` and is a heading.
 *
 * Parsed one by one, the slices give the same syntax as the whole, provided that a slice which ends inside a
 * fence or HTML block is glued to what follows, and that there are no link definitions. A block without an end
 * is reported and glued to nothing, so that the sections below it are still seen.
 */
export function sliceBody(
  text: string,
  from: number,
  findOpenBlock: FindOpenBlock,
  diagnostics: Diagnostic[],
  scan: ScanSlice,
): { readonly head: Slice; readonly sections: readonly Slice[] } {
  const parts = partsOf(text, from, diagnostics, scan);
  const walls = nextHostile(parts, text.length);
  const slices: Slice[] = [];
  let search: number = limits.searchCharacters;
  for (let index = 0; index < parts.length; ) {
    const part = parts[index] as Part;
    const limit = Math.min(walls[index] ?? text.length, part.from + limits.sectionCharacters);
    let { hostile, to: end } = part;
    if (!hostile && search > 0) {
      const glued = glue(text, part, limit, findOpenBlock);
      end = glued.to;
      if (glued.open !== null) {
        diagnostics.push(blockNotClosed(text, glued.open));
        search -= limit - part.from;
      }
      const problems = end > part.to ? scanSlice(text, part.from, end) : [];
      diagnostics.push(...problems);
      hostile = problems.length > 0;
    }
    slices.push({ from: part.from, text: text.slice(part.from, hostile ? harmlessEnd(text, part) : end) });
    index += 1;
    while ((parts[index]?.from ?? end) < end) index += 1;
  }
  const [head = { text: '', from }, ...sections] = slices;
  return { head, sections };
}

function partsOf(text: string, from: number, diagnostics: Diagnostic[], scan: ScanSlice): readonly Part[] {
  const starts = [from, ...headings(text, from)];
  const surplus = starts[limits.sections + 1];
  if (surplus !== undefined) {
    const span = { from: surplus, to: firstLineEnd(text, surplus, text.length) };
    diagnostics.push({ code: 'too-many-sections', count: starts.length - 1, limit: limits.sections, span });
  }
  return starts.slice(0, limits.sections + 1).map((start, index) => {
    const to = starts[index + 1] ?? text.length;
    const problems = scan(text, start, to);
    diagnostics.push(...problems);
    return { from: start, to, hostile: problems.length > 0 };
  });
}

/** Where lines begin with `## `. */
function headings(text: string, from: number): readonly number[] {
  const found: number[] = [];
  for (let at = text.indexOf('## ', from); at >= 0; at = text.indexOf('## ', at + 1)) {
    const before = text[at - 1];
    if (at === from || before === '\n' || before === '\r') found.push(at);
  }
  return found;
}

/** For each part, where the next hostile one begins behind it. */
function nextHostile(parts: readonly Part[], end: number): readonly number[] {
  const walls: number[] = [];
  let wall = end;
  for (let index = parts.length - 1; index >= 0; index -= 1) {
    walls[index] = wall;
    const part = parts[index];
    if (part?.hostile) wall = part.from;
  }
  return walls;
}

/** Where a section ends that may begin in a part and take in parts below it: a block that is open at the
 *  end of one part may be closed in a later part, behind which another one opens. */
function glue(
  text: string,
  part: Part,
  limit: number,
  findOpenBlock: FindOpenBlock,
): { readonly to: number; readonly open: number | null } {
  let { from, to } = part;
  while (to < limit) {
    const block = findOpenBlock(text, from, to, limit);
    if (block === null) break;
    if (block.to === null) return { to, open: block.from };
    from = block.to;
    to = nextHeading(text, block.to);
  }
  return { to, open: null };
}

function nextHeading(text: string, from: number): number {
  for (const line of linesOf(text, from)) if (text.startsWith('## ', line.from)) return line.from;
  return text.length;
}

function blockNotClosed(text: string, from: number): Diagnostic {
  const to = firstLineEnd(text, from, text.length);
  const mark = /^\s*(`+|~+|<[!?]?-?-?\w*)/.exec(text.slice(from, to))?.[1] ?? '<';
  return { code: 'block-not-closed', mark, span: { from, to } };
}

/** What is left of a hostile part: its heading, if that is no danger itself. */
function harmlessEnd(text: string, { from, to }: Part): number {
  const end = firstLineEnd(text, from, to);
  return text.startsWith('## ', from) && end - from < 500 && scanSlice(text, from, end).length === 0
    ? end
    : from;
}
