import type { ForeignFacts } from '../../model/foreign-facts.ts';
import type { ProcedureFacts } from '../../model/procedure-facts.ts';
import type { Reading } from '../../model/reading.ts';
import type { Span } from '../../model/span.ts';
import type { BodySyntax } from '../../read/body-syntax.ts';

/** A procedure without errors, ready to be followed. */
export interface Procedure {
  /** The file's name without its ending. */
  readonly id: string;
  /** In the library. */
  readonly path: string;
  readonly facts: ProcedureFacts;
  /** The readings it declares itself: each set of arguments has its own. */
  readonly locals: readonly Reading[];
  /** What it has in common with everything else: from the files it uses, and its settings and conditions. */
  readonly common: ForeignFacts;
  readonly body: BodySyntax;
  /** The procedures it follows, by calling section. */
  readonly calls: ReadonlyMap<string, Call>;
  /** How many sections a call of it adds, those of the procedures it follows included. */
  readonly size: number;
}

/** A Follow line that can be followed. */
export interface Call {
  /** The calling section. */
  readonly section: string;
  readonly procedure: Procedure;
  /** Texts as they were given, by parameter. */
  readonly given: ReadonlyMap<string, string>;
  /** The Follow line, in the file it stands in. */
  readonly span: Span;
}
