import type { ConditionFacts } from '../diagnostics/body-facts.ts';
import type { Fix } from '../diagnostics/diagnostic.ts';
import type { Named } from './named.ts';

/** A problem inside a condition: offsets count from the start of its text. */
export interface ConditionProblem {
  readonly facts: ConditionFacts;
  readonly from: number;
  readonly to: number;
  readonly fix?: Fix;
}

/** What people type for the words of a condition. */
const instead: ReadonlyMap<string, string> = new Map([
  ['=', 'is'],
  ['==', 'is'],
  ['!=', 'is not'],
  ['≠', 'is not'],
  ["isn't", 'is not'],
  ['|', 'or'],
  ['||', 'or'],
  ['&', 'and'],
  ['&&', 'and'],
  [';', 'and'],
]);

/** A code span that names a procedure's own reading, or one of many alike, is one word: `` `r_gnd of v5` ``,
 *  `` `the short one of rails` ``. */
const tokenPattern = /`(?:[\p{L}\p{N}_]+|the [^\s`]+ one) of [^`\n]+`|,|;|[=!≠|&]+|[^\s,;=!≠|&`]+/gu;

/** The words and commas of the text, with what people type for `is`, `and`, `or` put right. */
export function conditionTokens(text: string, problems: ConditionProblem[]): Named[] {
  const tokens: Named[] = [];
  for (const match of text.matchAll(tokenPattern)) {
    const from = match.index;
    const to = from + match[0].length;
    const word = instead.get(match[0]);
    if (word === undefined) {
      const ticks = match[0].startsWith('`') ? 1 : 0;
      const name = match[0].slice(ticks, match[0].length - ticks).replace(/\\([!-/:-@[-`{-~])/g, '$1');
      tokens.push({ name, from: from + ticks, to: to - ticks });
      continue;
    }
    problems.push({
      facts: { code: 'condition-word', word: match[0], instead: word },
      from,
      to,
      fix: { title: `Write "${word}"`, edits: [{ from, to, insert: spaced(text, from, to, word) }] },
    });
    for (const part of word.split(' ')) tokens.push({ name: part, from, to });
  }
  return tokens;
}

function spaced(text: string, from: number, to: number, word: string): string {
  const before = from > 0 && !/\s/.test(text.charAt(from - 1)) ? ' ' : '';
  const after = to < text.length && !/\s/.test(text.charAt(to)) ? ' ' : '';
  return before + word + after;
}
