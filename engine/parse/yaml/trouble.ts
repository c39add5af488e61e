import type { DiagnosticFacts } from '../../diagnostics/diagnostic.ts';
import type { Span } from '../../model/span.ts';
import type { Edit } from './edited-text.ts';

/** What the YAML parser complains about, and what it takes without complaint although nobody means it. */
export type TroubleKind =
  | 'error'
  /** The whole text is no table. */
  | 'no-table'
  /** A key without a value inside `{ }`. */
  | 'lone-key'
  /** `unit:V` alone below a key: a text to YAML. */
  | 'glued-pair'
  | 'key-is-no-text'
  | 'refused-key'
  | 'duplicate-key'
  | 'alias'
  | 'anchor'
  | 'tag'
  | 'special-dash'
  | 'empty-block'
  | 'comment'
  | 'too-deep';

export interface Trouble extends Span {
  readonly kind: TroubleKind;
  /** The parser's own code, for `error`; the depth, for `too-deep`. */
  readonly code: string;
  /** The parser's sentence; the key; whether a mark stands in front of a `text`. */
  readonly message: string;
  /** Another place: the first of two equal keys, the value that a comma has cut. */
  readonly other?: Span;
}

/** What to tell about a trouble, and how to go on. Places are those of the text the trouble is in. */
export interface Remedy {
  readonly facts: DiagnosticFacts;
  readonly span: Span;
  readonly related?: Span;
  /** Offered to the author. */
  readonly fix?: { readonly title: string; readonly edits: readonly Edit[] };
  /** Made on a copy, so that the rest can be read; none where the parser went on by itself. */
  readonly repair?: readonly Edit[];
}
