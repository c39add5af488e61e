import type { Diagnostic, DiagnosticFacts, Fix } from '../diagnostics/diagnostic.ts';
import type { FrontMatter, Path } from '../model/front-matter.ts';
import type { Span } from '../model/span.ts';

/** What a problem may have besides its facts and its place. */
interface Besides {
  readonly related?: Span;
  readonly fix?: Fix;
}

/** The front-matter being read, and the problems met so far. */
export class FactsContext {
  readonly diagnostics: Diagnostic[] = [];
  /** Readings whose bands are a guess, because what cuts them is wrong. */
  readonly unsure = new Set<string>();
  private readonly front: FrontMatter;

  constructor(front: FrontMatter) {
    this.front = front;
  }

  spanOf(path: Path, part: 'key' | 'value' = 'value'): Span {
    return this.front.spanOf(path, part);
  }

  atKey(path: Path, facts: DiagnosticFacts, besides: Besides = {}): void {
    this.at(this.front.spanOf(path, 'key'), facts, besides);
  }

  atValue(path: Path, facts: DiagnosticFacts, besides: Besides = {}): void {
    this.at(this.front.spanOf(path), facts, besides);
  }

  at(span: Span, facts: DiagnosticFacts, besides: Besides = {}): void {
    this.diagnostics.push({ ...facts, span, ...besides });
  }

  /** The keys of a table in the order of the file: objects put `10` before `00`. */
  keysOf(path: Path, table: object): readonly string[] {
    const placed = Object.keys(table).map((key) => ({
      key,
      from: this.front.spanOf([...path, key], 'key').from,
    }));
    return placed.sort((a, b) => a.from - b.from).map(({ key }) => key);
  }
}
