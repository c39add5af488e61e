import type { Staged } from '../diagnostics/staged.ts';
import type { FrontMatter } from '../model/front-matter.ts';
import type { Slice, Source } from '../model/source.ts';
import { openBlock, parseFrontMatter } from '../parse/index.ts';
import type { BodySyntax } from '../read/body-syntax.ts';
import { readBody } from '../read/read-body.ts';
import { readSection } from '../read/read-section.ts';
import type { SectionSyntax } from '../read/section-syntax.ts';
import { type CutFile, cutFrontMatter } from '../source/cut-front-matter.ts';
import { type ScanSlice, scanSlice } from '../source/scan-slice.ts';
import type { FindOpenBlock } from '../source/slice-body.ts';
import { splitSource } from '../source/split-source.ts';

/** A file as far as it can be read without looking at any other. */
export interface OpenFile {
  readonly text: string;
  readonly source: Staged<Source>;
  /** Null where it has no facts. */
  readonly front: Staged<FrontMatter> | null;
  /** What its facts say it is; null where they do not say. */
  readonly kind: string | null;
  readonly body: Staged<BodySyntax>;
}

/** How the parts of a file are read; a memory may know them already. */
export interface Readers {
  readonly cut: CutFile;
  readonly scan: ScanSlice;
  readonly open: FindOpenBlock;
  readonly front: (slice: Slice) => Staged<FrontMatter>;
  readonly section: (text: string) => Staged<SectionSyntax>;
}

const afresh: Readers = {
  cut: cutFrontMatter,
  scan: scanSlice,
  open: openBlock,
  front: parseFrontMatter,
  section: readSection,
};

/** Cuts a file and reads its parts:
 *
 *     text → source → front-matter
 *                   → head and sections
 */
export function openFile(text: string, readers: Readers = afresh): OpenFile {
  const source = splitSource(text, readers.open, readers);
  const front = source.value.front && readers.front(source.value.front);
  let body: Staged<BodySyntax> | null = null;
  return {
    text,
    source,
    front,
    kind: kindOf(front),
    get body() {
      body ??= readBody(source, readers.section);
      return body;
    },
  };
}

function kindOf(front: Staged<FrontMatter> | null): string | null {
  const data = front?.value.data as { readonly kind?: unknown } | null | undefined;
  return typeof data?.kind === 'string' ? data.kind : null;
}
