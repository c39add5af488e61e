import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Staged } from '../diagnostics/staged.ts';
import { readFacts } from '../facts/index.ts';
import { emptyLibrary, type Library } from '../library/library.ts';
import { KeptLinks } from '../link/kept-links.ts';
import type { ForeignFacts } from '../model/foreign-facts.ts';
import type { FrontMatter } from '../model/front-matter.ts';
import type { Slice } from '../model/source.ts';
import type { TreeFacts } from '../model/tree-facts.ts';
import { leavesOpen, openBlock, parseEntry, parseFrontMatter } from '../parse/index.ts';
import { readSection } from '../read/read-section.ts';
import { KeptRules } from '../rules/kept-rules.ts';
import { type CutFrontMatter, cutFrontMatter } from '../source/cut-front-matter.ts';
import { scanSlice } from '../source/scan-slice.ts';
import { besideShelf } from './beside-shelf.ts';
import { KeptTexts } from './kept-texts.ts';
import { type OpenFile, openFile } from './open-file.ts';
import type { Shelf } from './shelf.ts';

/**
 * What was made of a text before, so that after an edit only what changed is made again. What comes out is the same as
 * without it. For one file at a time: give each its own.
 */
export class Memory {
  private readonly sections = new KeptTexts(readSection);
  private readonly harmless = new KeptTexts((slice) => scanSlice(slice, 0, slice.length).length === 0);
  private readonly closed = new KeptTexts((slice) => !leavesOpen(slice));
  private readonly entries = new KeptTexts(parseEntry);
  /** What linking made of the sections. */
  readonly links = new KeptLinks();
  readonly rules = new KeptRules();
  private cut: { readonly above: string; readonly cut: CutFrontMatter } | null = null;
  private front: { readonly slice: Slice; readonly read: Staged<FrontMatter> } | null = null;
  private facts: {
    readonly front: FrontMatter;
    readonly foreign: ForeignFacts;
    readonly read: Staged<TreeFacts>;
  } | null = null;
  private shelf: WatchedShelf | null = null;

  /** The file as it is now. */
  open(text: string): OpenFile {
    this.harmless.turn();
    this.closed.turn();
    this.sections.turn();
    return openFile(text, {
      cut: (whole, diagnostics) => this.cutOf(whole, diagnostics),
      scan: (whole, from, to) => (this.harmless.of(whole.slice(from, to)) ? [] : scanSlice(whole, from, to)),
      open: (whole, from, to, limit) =>
        this.closed.of(whole.slice(from, to)) ? null : openBlock(whole, from, to, limit),
      front: (slice) => this.frontOf(slice),
      section: (each) => this.sections.of(each),
    });
  }

  /** The files beside it: as they were, while none of those that were looked at is another. */
  shelfOf(library: Library): Shelf {
    if (this.shelf === null || !this.shelf.isTrue(library)) this.shelf = new WatchedShelf(library);
    return this.shelf.shelf;
  }

  factsOf(front: FrontMatter, foreign: ForeignFacts): Staged<TreeFacts> {
    const { facts } = this;
    if (facts?.front === front && sameFacts(facts.foreign, foreign)) return facts.read;
    const read = readFacts(front, foreign);
    this.facts = { front, foreign, read };
    return read;
  }

  /** Where the facts end in order, nothing below that line was looked at. */
  private cutOf(text: string, diagnostics: Diagnostic[]): CutFrontMatter {
    if (this.cut !== null && text.startsWith(this.cut.above)) return this.cut.cut;
    const before = diagnostics.length;
    const cut = cutFrontMatter(text, diagnostics);
    const above = text.slice(0, cut.bodyFrom);
    const isSure = diagnostics.length === before && above.endsWith('\n');
    this.cut = isSure ? { above, cut } : null;
    return cut;
  }

  private frontOf(slice: Slice): Staged<FrontMatter> {
    const { front } = this;
    if (front?.slice.text === slice.text && front.slice.from === slice.from) return front.read;
    this.entries.turn();
    const read = parseFrontMatter(slice, (text) => this.entries.of(text));
    this.front = { slice, read };
    return read;
  }
}

/** A shelf that knows what it was asked for. */
class WatchedShelf {
  readonly shelf: Shelf;
  private library: Library;
  private readonly seen = new Map<string, string | null>();
  private readonly paths: string;

  constructor(library: Library) {
    this.library = library;
    this.paths = pathsOf(library);
    const watched: Library = {
      text: (path) => {
        const text = this.library.text(path);
        this.seen.set(path, text);
        return text;
      },
      picture: (path) => this.library.picture(path),
      paths: () => this.library.paths?.() ?? [],
    };
    this.shelf = besideShelf(watched, library === emptyLibrary);
  }

  isTrue(library: Library): boolean {
    this.library = library;
    if (pathsOf(library) !== this.paths) return false;
    return [...this.seen].every(([path, text]) => library.text(path) === text);
  }
}

const pathsOf = (library: Library): string => (library.paths?.() ?? []).join('\n');

const tables = ['conditions', 'settings', 'readings', 'faults'] as const;

/** Whether both give the same: what a call brings is made anew each time. */
const sameFacts = (a: ForeignFacts, b: ForeignFacts): boolean =>
  a === b ||
  ((a.ones ?? []).join('\n') === (b.ones ?? []).join('\n') &&
    tables.every((table) => {
      const [one, other] = [a[table], b[table]];
      return (
        one.length === other.length &&
        one.every(
          (each, index) => each === other[index] || JSON.stringify(each) === JSON.stringify(other[index]),
        )
      );
    }));
