import { analysisWords } from './analysis-words.ts';
import { boardWords } from './board-words.ts';
import { bodyWords } from './body-words.ts';
import { caseWords } from './case-words.ts';
import type { DiagnosticFacts, Severity } from './diagnostic.ts';
import { fileWords } from './file-words.ts';
import { frontMatterWords } from './front-matter-words.ts';
import { sourceWords } from './source-words.ts';
import { textWords } from './text-words.ts';
import { treeRuleWords } from './tree-rule-words.ts';
import type { AnyWords, WordTable } from './words.ts';

/** The words for every code there is. */
export const allWords: WordTable<DiagnosticFacts> = {
  ...sourceWords,
  ...fileWords,
  ...frontMatterWords,
  ...textWords,
  ...bodyWords,
  ...treeRuleWords,
  ...analysisWords,
  ...caseWords,
  ...boardWords,
};

export interface Description {
  readonly severity: Severity;
  /** What is wrong: a sentence without its full stop. */
  readonly wrong: string;
  /** What to do. */
  readonly mend: string;
}

/** A problem in words. */
export function describe(facts: DiagnosticFacts): Description {
  const { severity, wrong, mend } = allWords[facts.code] as AnyWords;
  return { severity, wrong: wrong(facts), mend: mend(facts) };
}
