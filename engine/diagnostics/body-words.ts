import type { BodyFacts } from './body-facts.ts';
import { linkWords } from './link-words.ts';
import { anyOf, said, short } from './phrases.ts';
import type { WordTable } from './words.ts';

const conditionShape =
  'Write it as `low`, `low, none`, `v5 is low`, `v5 is not good and pg is low`, `any lines are stuck`, `all good`, `otherwise` or `cannot read`';

/** What to do with a lead line that does not take a list of names and stands twice. */
const twice: ReadonlyMap<string, string> = new Map([
  ...['Do', 'Then', 'Stop', 'Follow', 'End'].map((word) => [word, 'Make two sections of it'] as const),
  ['Only if', 'Join them in one line with "and"'],
]);

/** The words for problems of the body. */
export const bodyWords: WordTable<BodyFacts> = {
  'condition-syntax': {
    severity: 'error',
    wrong: ({ expected, found }) =>
      found === ''
        ? `The condition ends where ${expected} is expected`
        : `Expected ${expected} but found "${found}"`,
    mend: () => conditionShape,
  },
  'condition-word': {
    severity: 'error',
    wrong: ({ word }) => `"${word}" is no word of a condition`,
    mend: ({ instead }) => `Write "${instead}"`,
  },
  'comma-before-clause': {
    severity: 'error',
    wrong: ({ name }) => `A comma stands before the clause about "${name}", where it would mean "or"`,
    mend: () => 'Write "and" between clauses; a comma only stands between bands of one reading',
  },
  'or-before-clause': {
    severity: 'error',
    wrong: ({ name }) =>
      `"or" stands before the clause about "${name}", but only bands of one reading are joined by it`,
    mend: () => 'Write two lines that lead to the same section, one for each clause',
  },

  'lead-inside-paragraph': {
    severity: 'error',
    wrong: ({ word }) => `This "${word}" line is swallowed by the paragraph above it`,
    mend: () => 'Put an empty line above it',
  },
  'near-lead-line': {
    severity: 'hint',
    wrong: ({ word }) => `This looks like a "${word}" line but is prose`,
    mend: ({ form }) => `If it is meant, write ${form} and nothing else in the paragraph`,
  },
  'lead-line-clash': {
    severity: 'error',
    wrong: ({ first, second }) => `A section with "${first}" cannot have "${second}" too`,
    mend: () => 'Give the second its own section under a "## " heading',
  },
  'lead-line-twice': {
    severity: 'error',
    wrong: ({ word }) => `"${word}" stands twice in this section`,
    mend: ({ word }) => twice.get(word) ?? 'Put all names into one line',
  },
  'lead-line-alone': {
    severity: 'error',
    wrong: ({ word, needs }) => `"${word}" stands in a section without ${anyOf(needs)}`,
    mend: ({ word, needs }) => `Add the ${anyOf(needs)} line, or take "${word}" away`,
  },
  'lead-above-sections': {
    severity: 'error',
    wrong: ({ word }) => `"${word}" stands above the first section`,
    mend: () => 'Put a "## " heading above it',
  },
  'section-without-lead-line': {
    severity: 'error',
    wrong: ({ title }) => `Nothing says what the section "${short(title)}" is`,
    mend: () => 'Add Read or Follow with outcomes, Do with Then, Fault with Prove, End, or Stop',
  },
  'task-without-then': {
    severity: 'error',
    wrong: () => 'Nothing says where this task goes on',
    mend: () => 'Add a paragraph: Then → [Title](#slug)',
  },
  'task-time': {
    severity: 'error',
    wrong: ({ text }) => `Cannot read "${short(text)}" as the time of a task`,
    mend: () =>
      'Write "Do, 5 minutes: …", "Do, 1.5 hours: …" or "Do, 5 minutes, wait 30 minutes: …", and conditions such as "cards out" behind the time',
  },
  'proof-tries': {
    severity: 'error',
    wrong: ({ good, tries }) =>
      tries === 0 ? 'A proof of no tries proves nothing' : `A proof cannot ask for ${good} of ${tries} tries`,
    mend: () => 'Every try of a proof must succeed: write 20 of 20 `starts`',
  },
  'only-if-form': {
    severity: 'error',
    wrong: () => 'This does not say what must have been seen before',
    mend: () => 'Write "Only if `v5` is good and `pg` is not low." and nothing else in the paragraph',
  },
  'follow-elsewhere': {
    severity: 'error',
    wrong: ({ url }) => `"${short(url)}" is not a procedure`,
    mend: () => 'A procedure is a file of its own: write "Follow [Title](../procedures/name.md)."',
  },
  'several-ends': {
    severity: 'error',
    wrong: ({ ends }) => `A walk cannot end as ${said(ends)} at once`,
    mend: () => 'Give each end a section of its own',
  },
  'beside-end': {
    severity: 'error',
    wrong: () => 'This stands beside End, where nobody would ever see it',
    mend: () => 'Put it into the sections that lead here, or into what the end means in the front-matter',
  },
  'nothing-after': {
    severity: 'error',
    wrong: ({ word }) => `Nothing follows "${word}"`,
    mend: ({ word }) =>
      word === 'Do'
        ? 'Say in the same paragraph what to do; a list may follow below'
        : 'Say in the same paragraph what there is to say',
  },
  'name-twice': {
    severity: 'error',
    wrong: ({ word, name }) => `"${word}" names "${name}" twice`,
    mend: () => 'Take one of them away',
  },
  'fault-without-remedy': {
    severity: 'error',
    wrong: ({ fault }) => `Nothing says how to mend "${fault}"`,
    mend: ({ fault, several }) =>
      several
        ? `Add a heading "### \`${fault}\`" and the remedy below it`
        : 'Describe the remedy between Fault and Prove',
  },

  'outcomes-without-read': {
    severity: 'error',
    wrong: () => 'These outcomes stand in a section that reads nothing',
    mend: () => 'Say above them what is read (Read `a`, `b`.) or followed (Follow [Title](file.md).)',
  },
  'check-without-outcomes': {
    severity: 'error',
    wrong: () => 'Nothing says where these readings lead',
    mend: () => 'Add a list with a line for each outcome: - low → [Title](#slug)',
  },
  'call-without-outcomes': {
    severity: 'error',
    wrong: () => 'Nothing says where the ends of this procedure lead',
    mend: () => 'Add a list with a line for each end: - found → [Title](#slug)',
  },
  'call-not-read': {
    severity: 'error',
    wrong: () => 'A procedure is followed and not read',
    mend: () => 'Name one of its ends, or write "otherwise"',
  },
  'outcome-without-link': {
    severity: 'error',
    wrong: ({ text }) => (text === '' ? 'This outcome leads nowhere' : `"${short(text)}" is not a link`),
    mend: () => 'Write the section as [Title](#slug)',
  },
  'outcome-without-arrow': {
    severity: 'error',
    wrong: () => 'This line of the outcomes has no arrow',
    mend: () => 'Write it as: condition → [Title](#slug)',
  },
  'outcome-without-condition': {
    severity: 'error',
    wrong: () => 'This outcome does not say when it is taken',
    mend: () => 'Put a condition before the arrow, for instance "otherwise"',
  },
  'outcome-elsewhere': {
    severity: 'error',
    wrong: ({ url }) => `"${short(url)}" is neither a section of this file nor another tree`,
    mend: () => 'Link to a section as [Title](#slug), or to a tree beside this one as [Title](memory.md)',
  },
  'outcome-extra': {
    severity: 'error',
    wrong: () => 'This stands inside an outcome but does not belong to its line',
    mend: () => 'Put it above or below the list, or into the section that the outcome leads to',
  },
  'outcome-in-paragraph': {
    severity: 'error',
    wrong: () => 'This looks like an outcome but is not a line of the list',
    mend: () => 'Begin the line with "- ", and put an empty line above the list',
  },
  'arrow-form': {
    severity: 'error',
    wrong: ({ found }) => `"${found}" is not the arrow of an outcome`,
    mend: () => 'Write "→" or "->"',
  },
  'swallowed-line': {
    severity: 'error',
    wrong: () => 'This line is swallowed by the outcome above it',
    mend: () => 'Begin an outcome with "- "; put an empty line above anything else',
  },
  'nested-outcome': {
    severity: 'error',
    wrong: () => 'These outcomes are indented and so belong to the line above them',
    mend: () => 'Take the indentation away',
  },
  'indented-outcome': {
    severity: 'error',
    wrong: () => 'Four spaces make code of this outcome',
    mend: () => 'Take the indentation away',
  },
  'list-marker': {
    severity: 'error',
    wrong: ({ marker }) => `Outcomes begin with "-", not with "${marker}"`,
    mend: () => 'Begin every outcome with "- ", so that all of them are one list',
  },
  'ordered-outcomes': {
    severity: 'error',
    wrong: () => 'Outcomes are not numbered',
    mend: () => 'Begin every outcome with "- "; the first line that fits is taken anyway',
  },
  'second-outcome-list': {
    severity: 'error',
    wrong: () => 'This section has a second list of outcomes',
    mend: () => 'Put all outcomes into one list',
  },

  'setext-heading': {
    severity: 'error',
    wrong: ({ text }) => `The line below makes a heading of "${short(text)}"`,
    mend: () => 'Write headings with "## "; for a rule, put an empty line above it',
  },
  'section-form': {
    severity: 'error',
    wrong: () => 'This heading does not begin a section',
    mend: () => 'Write "## " at the very left, with one space after it',
  },
  'top-heading': {
    severity: 'error',
    wrong: () => 'A first-level heading can only be the title, above the first section',
    mend: () => 'Begin a section with "## ", or a part of a section with "### "',
  },
  'empty-heading': {
    severity: 'error',
    wrong: () => 'This section has no name',
    mend: () => 'Write a title with letters or digits after "## "',
  },
  'lazy-quote': {
    severity: 'error',
    wrong: () => 'This line has no ">" but still belongs to the quote above it',
    mend: () => 'Begin it with "> ", or put an empty line above it',
  },
  'hazard-form': {
    severity: 'error',
    wrong: ({ word }) => `This looks like a ${word} but would not have to be acknowledged`,
    mend: ({ word }) => `Begin the quote with "> **${word.charAt(0).toUpperCase()}${word.slice(1)}** "`,
  },
  'hazard-place': {
    severity: 'error',
    wrong: ({ word }) => `A ${word} stands where it would not have to be acknowledged`,
    mend: ({ word }) =>
      `Make it a quote at the very left: "> **${word.charAt(0).toUpperCase()}${word.slice(1)}** …"`,
  },
  'hazard-missing': {
    severity: 'warning',
    wrong: ({ words, is }) => `"${short(words)}" is ${is}, and no hazard warns of it`,
    mend: ({ signal }) =>
      `Say what can happen and how to avoid it in a quote above: "> **${signal.charAt(0).toUpperCase()}${signal.slice(1)}** …"`,
  },
  html: {
    severity: 'error',
    wrong: ({ text }) => `"${short(text)}" is HTML, which trees do not have`,
    mend: () => 'Write it in Markdown; to show "<" itself, put it into a code span or write "\\<"',
  },
  'link-definition': {
    severity: 'error',
    wrong: ({ label }) => `The address of "${short(label)}" stands apart from its link`,
    mend: ({ url }) => `Write it in the link: [text](${short(url)})`,
  },
  'link-address': {
    severity: 'error',
    wrong: ({ url }) => `A link cannot lead to "${short(url)}"`,
    mend: () => 'Link to http, https, mailto, a section (#slug) or a Markdown file beside this one',
  },
  'image-address': {
    severity: 'error',
    wrong: ({ url }) => `A picture cannot come from "${short(url)}"`,
    mend: () => 'Use a file beside this one, or data:image/png, jpeg or svg+xml without script',
  },
  'brace-value': {
    severity: 'hint',
    wrong: ({ text }) => `"{${short(text)}}" is shown as it stands`,
    mend: () => 'To show the value of a setting, put it into a code span: `fsb` or `= fsb * 2`',
  },

  ...linkWords,
};
