import { analysisWords } from '../../../engine/diagnostics/analysis-words.ts';
import { boardWords } from '../../../engine/diagnostics/board-words.ts';
import { bodyWords } from '../../../engine/diagnostics/body-words.ts';
import { caseWords } from '../../../engine/diagnostics/case-words.ts';
import { describe } from '../../../engine/diagnostics/describe.ts';
import type { DiagnosticCode } from '../../../engine/diagnostics/diagnostic.ts';
import { fileWords } from '../../../engine/diagnostics/file-words.ts';
import { frontMatterWords } from '../../../engine/diagnostics/front-matter-words.ts';
import { sourceWords } from '../../../engine/diagnostics/source-words.ts';
import { textWords } from '../../../engine/diagnostics/text-words.ts';
import { treeRuleWords } from '../../../engine/diagnostics/tree-rule-words.ts';
import { brokenLines } from './broken-lines.ts';
import { compileFixture } from './compile-fixture.ts';
import { readInput } from './fixtures.ts';

const groups: readonly { readonly title: string; readonly words: object }[] = [
  { title: 'The file', words: sourceWords },
  { title: 'The front-matter', words: frontMatterWords },
  { title: 'Quantities, scales and formulas', words: textWords },
  { title: 'The body', words: bodyWords },
  { title: 'Between files', words: fileWords },
  { title: 'The tree as a whole', words: treeRuleWords },
  { title: 'Walks through the tree', words: analysisWords },
  { title: 'Board sheets', words: boardWords },
  { title: 'Cases', words: caseWords },
];

const introduction = `# What the checker says

Every problem has a code that stays, a severity, a place, a sentence that says what is wrong and one that says what to do. Errors keep
a tree from being compiled; warnings and hints do not. One example of each stands here: a line, and what is said
about it. The whole files are in \`tests/fixtures/diagnostics\`.
`;

/** The page as it must be: every code there is, with what is said about its fixture. */
export const diagnosticsPage = (): string =>
  [
    introduction,
    ...groups.map(
      ({ title, words }) =>
        `## ${title}\n\n| code | severity | example | what is wrong | what to do |\n| --- | --- | --- | --- | --- |\n${Object.keys(
          words,
        )
          .map((code) => row(code as DiagnosticCode))
          .join('')}`,
    ),
  ].join('\n');

function row(code: DiagnosticCode): string {
  const text = readInput(code);
  const line = text.split(/\r\n|\n/)[brokenLines[code] - 1] ?? '';
  const found = compileFixture(code).find((diagnostic) => diagnostic.code === code);
  if (found === undefined) throw new Error(`the fixture "${code}" does not produce its code`);
  const { severity, wrong, mend } = describe(found);
  return `| \`${code}\` | ${severity} | ${codeSpan(line)} | ${cell(wrong)} | ${cell(mend)} |\n`;
}

const cell = (text: string): string =>
  text.replaceAll('\\', '\\\\').replaceAll('|', '\\|').replaceAll('<', '\\<').replaceAll('*', '\\*');

/** A code span that also holds backticks. */
function codeSpan(line: string): string {
  const words = line.replaceAll('\t', '→').trim().replaceAll('|', '\\|');
  const text = words.length > 70 ? `${words.slice(0, 67)}…` : words;
  const longest = Math.max(0, ...(text.match(/`+/g) ?? []).map((run) => run.length));
  const mark = '`'.repeat(longest + 1);
  if (text === '') return '(an empty line)';
  return longest === 0 ? `${mark}${text}${mark}` : `${mark} ${text} ${mark}`;
}
