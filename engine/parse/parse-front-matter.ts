import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { movedDiagnostic } from '../diagnostics/moved-diagnostic.ts';
import type { Staged } from '../diagnostics/staged.ts';
import type { FrontMatter, Path } from '../model/front-matter.ts';
import type { Slice } from '../model/source.ts';
import type { Span } from '../model/span.ts';
import { limits } from '../source/limits.ts';
import { cutEntries, type Entry } from './yaml/cut-entries.ts';
import { type FactNode, type FactPair, shiftedPair } from './yaml/fact-node.ts';
import { parseEntry } from './yaml/parse-entry.ts';
import { placeOf } from './yaml/place-of.ts';
import { plainData } from './yaml/plain-data.ts';
import { wordsAt } from './yaml/value-at.ts';

/**
 * The facts of a file as data, with the way back to their places.
 *
 * Every scalar is text. Entries are parsed one by one, so that an error in one leaves the others whole. Each needs nothing
 * but its own text, so `parse` may keep what it parsed before.
 */
export function parseFrontMatter(front: Slice, parse = parseEntry): Staged<FrontMatter> {
  const reader = new EntryReader(front, parse);
  const pairs = reader.pairs(cutEntries(front.text));
  const root: FactNode = { kind: 'table', ...firstLine(front), pairs };
  const value: FrontMatter = {
    data: plainData(root),
    spanOf: (path: Path, part: 'key' | 'value' = 'value'): Span => placeOf(root, path, part),
  };
  return { value, diagnostics: reader.diagnostics };
}

class EntryReader {
  readonly diagnostics: Diagnostic[] = [];
  private readonly front: Slice;
  private readonly parse: typeof parseEntry;
  private left: number = limits.entries;

  constructor(front: Slice, parse: typeof parseEntry) {
    this.front = front;
    this.parse = parse;
  }

  /** The pairs of neighbouring entries, each key once. */
  pairs(entries: readonly Entry[]): readonly FactPair[] {
    const known = new Map<string, FactPair>();
    const indent = this.indentOf(entries[0]);
    for (const entry of entries) {
      if (!this.goesOn(entry)) break;
      if (entry.misplaced) this.badIndent(entry, indent);
      for (const pair of this.pairsOf(entry)) {
        const first = known.get(pair.key);
        if (first === undefined) known.set(pair.key, pair);
        else {
          const [span, related] = [pair, first].map(({ from, to }) => ({ from, to })) as [Span, Span];
          this.diagnostics.push({ code: 'duplicate-key', key: pair.key, span, related });
        }
      }
    }
    return [...known.values()];
  }

  private pairsOf(entry: Entry): readonly FactPair[] {
    const [first] = entry.entries;
    if (first === undefined) return this.parsed(entry.from, entry.to);
    const [head] = this.parsed(entry.from, first.from);
    const pairs = this.pairs(entry.entries);
    if (head === undefined) return [];
    const to = pairs.at(-1)?.value.to ?? head.to;
    return [{ ...head, value: { kind: 'table', from: this.front.from + first.from, to, pairs } }];
  }

  private parsed(from: number, to: number): readonly FactPair[] {
    const at = this.front.from + from;
    const { pairs, diagnostics } = this.parse(this.front.text.slice(from, to));
    this.diagnostics.push(...diagnostics.map((diagnostic) => movedDiagnostic(diagnostic, at)));
    return pairs.map((pair) => shiftedPair(pair, (offset) => offset + at));
  }

  /** Whether there is room for one more entry; told once if not. */
  private goesOn(entry: Entry): boolean {
    this.left -= 1;
    if (this.left === -1) {
      const span = this.wordsOf(entry);
      this.diagnostics.push({ code: 'too-many-entries', limit: limits.entries, span });
    }
    return this.left >= 0;
  }

  private badIndent(entry: Entry, indent: string): void {
    const span = this.wordsOf(entry);
    const edits = [{ from: this.front.from + entry.from, to: span.from, insert: indent }];
    this.diagnostics.push({ code: 'bad-indent', span, fix: { title: 'Move the line', edits } });
  }

  /** The first line of an entry, where its words are. */
  private wordsOf(entry: Entry): Span {
    const { from, to } = wordsAt(this.front.text, entry.from);
    return { from: this.front.from + from, to: this.front.from + to };
  }

  private indentOf(entry: Entry | undefined): string {
    return entry === undefined ? '' : (/^ */.exec(this.front.text.slice(entry.from))?.[0] ?? '');
  }
}

/** Where the facts as a whole are pointed at. */
function firstLine({ text, from }: Slice): Span {
  const start = /^\s*/.exec(text)?.[0].length ?? 0;
  const length = text.slice(start).search(/[\r\n]|$/);
  return { from: from + start, to: from + start + length };
}
