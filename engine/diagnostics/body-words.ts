import type { BodyFacts } from './body-facts.ts';
import { anyOf, listed, short } from './phrases.ts';
import type { WordTable } from './words.ts';

const meant = (near: readonly string[], fallback: string): string =>
  near.length === 0 ? fallback : `Did you mean ${anyOf(near)}?`;

const conditionShape =
  'Write it as `low`, `low, none`, `v5 is low`, `v5 is not good and pg is low`, `all good`, `otherwise` or `cannot read`';

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
    mend: ({ word }) =>
      word === 'Do' || word === 'Then' || word === 'Stop'
        ? 'Make two sections of it'
        : 'Put all names into one line',
  },
  'lead-line-alone': {
    severity: 'error',
    wrong: ({ word, needs }) => `"${word}" stands in a section without "${needs}"`,
    mend: ({ word, needs }) => `Add the "${needs}" line, or take "${word}" away`,
  },
  'lead-above-sections': {
    severity: 'error',
    wrong: ({ word }) => `"${word}" stands above the first section`,
    mend: () => 'Put a "## " heading above it',
  },
  'section-without-lead-line': {
    severity: 'error',
    wrong: ({ title }) => `Nothing says what the section "${short(title)}" is`,
    mend: () => 'Add Read with outcomes, Do with Then, Fault with Prove, or Stop',
  },
  'task-without-then': {
    severity: 'error',
    wrong: () => 'Nothing says where this task goes on',
    mend: () => 'Add a paragraph: Then → [Title](#slug)',
  },
  'task-time': {
    severity: 'error',
    wrong: ({ text }) => `Cannot read "${short(text)}" as the time of a task`,
    mend: () => 'Write "Do, 5 minutes: …", "Do, 1.5 hours: …" or "Do, 5 minutes, wait 30 minutes: …"',
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
    mend: () => 'Name the readings above them: Read `a`, `b`.',
  },
  'check-without-outcomes': {
    severity: 'error',
    wrong: () => 'Nothing says where these readings lead',
    mend: () => 'Add a list with a line for each outcome: - low → [Title](#slug)',
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
    wrong: ({ url }) => `"${short(url)}" is not a section of this file`,
    mend: () => 'Link to a section as [Title](#slug); to leave the tree, link to a section with Stop',
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

  'title-differs': {
    severity: 'warning',
    wrong: ({ title, heading }) => `The heading "${short(heading)}" is not the title "${short(title)}"`,
    mend: () => 'Use the same words in both places',
  },
  'equal-slugs': {
    severity: 'error',
    wrong: ({ slug, title }) => `"#${slug}" already leads to the section "${short(title)}"`,
    mend: () => 'Give one of the two sections another title',
  },
  'no-section-named': {
    severity: 'error',
    wrong: ({ slug }) => `No section of this file is called "#${short(slug)}"`,
    mend: ({ near }) =>
      meant(
        near.map((slug) => `#${slug}`),
        'Add the section, or link to one that exists',
      ),
  },
  'no-reading-named': {
    severity: 'error',
    wrong: ({ name }) => `No reading is called "${short(name)}"`,
    mend: ({ near }) => meant(near, 'Declare it under "readings:" in the front-matter'),
  },
  'no-fault-named': {
    severity: 'error',
    wrong: ({ name }) => `No fault is called "${short(name)}"`,
    mend: ({ near }) => meant(near, 'Declare it under "faults:" in the front-matter'),
  },
  'nothing-named': {
    severity: 'error',
    wrong: ({ name }) => `Neither a reading nor a setting is called "${short(name)}"`,
    mend: ({ near }) => meant(near, 'Name a reading of this check, or a setting with options'),
  },
  'no-band-named': {
    severity: 'error',
    wrong: ({ name, band }) => `"${name}" has no band "${short(band)}"`,
    mend: ({ near, bands }) => meant(near, `Use one of ${listed(bands)}`),
  },
  'bare-band': {
    severity: 'error',
    wrong: ({ band, readings }) => `"${short(band)}" could speak of any of ${listed(readings)}`,
    mend: ({ band }) =>
      band === 'good' ? 'Write "all good", or name the reading: v5 is good' : 'Name the reading: v5 is low',
  },
  'not-read-here': {
    severity: 'error',
    wrong: ({ name }) => `This check does not read "${name}"`,
    mend: ({ readings }) => `Add it to the Read line, or ask for ${listed(readings)}`,
  },
  'setting-without-options': {
    severity: 'error',
    wrong: ({ name }) => `"${name}" is a quantity and has no bands to ask for`,
    mend: () => 'Conditions ask settings that have options; use a quantity in the limits of a scale',
  },
  'nothing-to-judge': {
    severity: 'error',
    wrong: () => 'No reading of this check has a normal band, so "all good" says nothing',
    mend: () => 'Name bands, or write "otherwise"',
  },
  'clauses-exclude': {
    severity: 'error',
    wrong: ({ name }) => `The clauses about "${name}" leave it no band`,
    mend: () => 'Join bands of one name with "or": v5 is low or none',
  },
  'cannot-read-twice': {
    severity: 'error',
    wrong: () => 'This check already has a "cannot read" line',
    mend: () => 'Take one of them away',
  },
};
