import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Staged } from '../diagnostics/staged.ts';
import type { Source } from '../model/source.ts';
import { type CutFile, cutFrontMatter } from './cut-front-matter.ts';
import { limits } from './limits.ts';
import { type ScanSlice, scanSlice } from './scan-slice.ts';
import { type FindOpenBlock, sliceBody } from './slice-body.ts';

interface Knows {
  readonly cut: CutFile;
  readonly scan: ScanSlice;
}

const afresh: Knows = { cut: cutFrontMatter, scan: scanSlice };

/**
 * Cuts a file at its front-matter and at its sections, by hand and before anything is parsed.
 *
 * A byte order mark is skipped, line endings stay as they are, and every offset counts in the whole file. A
 * section that no parser can be trusted with is reported and keeps only its heading, so that the rest is still checked.
 * @param findOpenBlock tells whether a slice ends inside a fence or HTML block; only a Markdown parser knows
 * @param knows a memory may know already where the facts end, and which slices a parser can be trusted with
 */
export function splitSource(
  text: string,
  findOpenBlock: FindOpenBlock,
  knows: Knows = afresh,
): Staged<Source> {
  const { fileCharacters } = limits;
  if (text.length > fileCharacters) {
    const value = { text, front: null, head: { text: '', from: 0 }, sections: [] };
    const span = { from: 0, to: 0 };
    return {
      value,
      diagnostics: [{ code: 'file-too-large', characters: text.length, limit: fileCharacters, span }],
    };
  }
  const diagnostics: Diagnostic[] = [];
  const { front, bodyFrom } = knows.cut(text, diagnostics);
  const { head, sections } = sliceBody(text, bodyFrom, findOpenBlock, diagnostics, knows.scan);
  return { value: { text, front, head, sections }, diagnostics };
}
