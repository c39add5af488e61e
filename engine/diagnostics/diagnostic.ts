import type { Span } from '../model/span.ts';
import type { TextProblemFacts } from '../model/text-problem.ts';
import type { AnalysisFacts } from './analysis-facts.ts';
import type { BoardFacts } from './board-facts.ts';
import type { BodyFacts } from './body-facts.ts';
import type { CaseFacts } from './case-facts.ts';
import type { BesideFacts } from './file-facts.ts';
import type { FrontMatterFacts } from './front-matter-facts.ts';
import type { SourceFacts } from './source-facts.ts';
import type { TreeRuleFacts } from './tree-rule-facts.ts';

/** The facts of every problem a file can have; the words are in the tables beside them. */
export type DiagnosticFacts =
  | BesideFacts
  | CaseFacts
  | BoardFacts
  | SourceFacts
  | FrontMatterFacts
  | TextProblemFacts
  | BodyFacts
  | TreeRuleFacts
  | AnalysisFacts;
export type DiagnosticCode = DiagnosticFacts['code'];
export type Severity = 'error' | 'warning' | 'hint';

/** A change of the text that would mend the problem. */
export interface Fix {
  readonly title: string;
  readonly edits: readonly { readonly from: number; readonly to: number; readonly insert: string }[];
}

/** A problem in a file. Severity and sentence follow from the code: see `describe`. */
export type Diagnostic = DiagnosticFacts & {
  readonly span: Span;
  /** Another place that belongs to it: the first of two equal headings. */
  readonly related?: Span;
  readonly fix?: Fix;
};
