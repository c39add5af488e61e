import { declarationWords } from './declaration-words.ts';
import type {
  FrontMatterFacts,
  MeaningFacts,
  NameKind,
  ShapeFacts,
  YamlFacts,
} from './front-matter-facts.ts';
import { anyOf, listed, said, short } from './phrases.ts';
import type { WordTable } from './words.ts';

const yamlWords: WordTable<YamlFacts> = {
  'needs-quotes': {
    severity: 'error',
    wrong: ({ text }) => `YAML takes "${short(text)}" apart`,
    mend: ({ instead }) => `Put the text in quotes: ${short(instead)}`,
  },
  'leading-greater': {
    severity: 'error',
    wrong: ({ text }) => `YAML takes the ">" of "${short(text)}" for the beginning of a block of text`,
    mend: ({ instead }) =>
      `Write ${instead.startsWith('at least') ? `"${short(instead)}", or "≥" in one sign` : short(instead)}`,
  },
  'comma-in-braces': {
    severity: 'error',
    wrong: ({ text }) => `Inside { } a comma ends the value, and cuts "${short(text)}" in two`,
    mend: ({ instead }) =>
      `Put the text in quotes: ${short(instead)}; or write the table with one key on each line. Numbers take a decimal point`,
  },
  'space-after-colon': {
    severity: 'error',
    wrong: ({ text }) => `Without a space behind its colon, "${short(text)}" is no key`,
    mend: ({ text }) => `Write "${short(text)} " and then the value`,
  },
  'hash-cuts-text': {
    severity: 'warning',
    wrong: ({ kept, lost }) =>
      `YAML takes "${short(lost)}" for a comment and reads ${kept === '' ? 'nothing' : `only "${short(kept)}"`}`,
    mend: () => 'Put the whole text in quotes; if it is a comment, write a space behind the "#"',
  },
  'special-space': {
    severity: 'error',
    wrong: ({ name }) => `This is ${name}, which is no space to YAML`,
    mend: () => 'Write a plain space',
  },
  'tab-indent': {
    severity: 'error',
    wrong: () => 'YAML is not indented with tabs',
    mend: () => 'Write two spaces for each step',
  },
  'bad-indent': {
    severity: 'error',
    wrong: () => 'This line stands neither below its neighbours nor below a key of its own',
    mend: () =>
      'Let keys of one table begin in one column, two spaces to the right of the key they belong to',
  },
  'quote-not-closed': {
    severity: 'error',
    wrong: ({ quote }) => `The quote that ${quote} begins has no end`,
    mend: ({ quote }) => `Write ${quote} at the end of the text`,
  },
  'bracket-not-closed': {
    severity: 'error',
    wrong: ({ bracket }) => `The "${bracket}" has no closing "${bracket === '{' ? '}' : ']'}"`,
    mend: ({ bracket }) => `Write "${bracket === '{' ? '}' : ']'}" at its end`,
  },
  'not-a-pair': {
    severity: 'error',
    wrong: ({ text }) => `"${short(text)}" is no key with a value`,
    mend: () =>
      'Write "key: value"; a text that goes on from the line above is indented further than its key',
  },
  'duplicate-key': {
    severity: 'error',
    wrong: ({ key }) => `"${short(key)}" stands here a second time`,
    mend: () => 'Take one of them away, or give it another name',
  },
  'yaml-feature': {
    severity: 'error',
    wrong: ({ feature }) =>
      ({
        anchor: 'To YAML "&" begins an anchor, and facts have none',
        alias: 'To YAML "*" begins an alias, and facts have none',
        tag: 'To YAML "!" begins a tag, and facts have none',
        'merge key': 'To YAML "<<" merges tables, and facts do not',
        'key that is no text': 'A key has to be a text',
        directive: 'To YAML "%" begins a directive, and facts have none',
        'document end': 'To YAML "..." ends the document, and facts end with "---"',
      })[feature],
    mend: ({ feature }) =>
      ({
        anchor: 'Put a text that begins with "&" in quotes; take an anchor away',
        alias: 'Put a text that begins with "*" in quotes; write out what an alias stands for',
        tag: 'Put a text that begins with "!" in quotes; take a tag away',
        'merge key': 'Write the keys out',
        'key that is no text': 'Write "key: value" with a plain name as the key',
        directive: 'Take the line away',
        'document end': 'Take the line away',
      })[feature],
  },
  'yaml-syntax': {
    severity: 'error',
    wrong: ({ message }) => `YAML cannot be read here: ${short(message)}`,
    mend: () =>
      'Write "key: value", lists as [a, b], tables as { key: value }, and put other texts in quotes',
  },
  'facts-too-deep': {
    severity: 'error',
    wrong: ({ depth, limit }) =>
      `Tables and lists lie ${depth} deep in each other here, and nothing of it is read; ${limit} is the most`,
    mend: () => 'Nothing needs more than six levels: take brackets away',
  },
  'too-many-entries': {
    severity: 'error',
    wrong: ({ limit }) =>
      `The facts have more than ${limit.toLocaleString('en')} keys, and from here on they are not read`,
    mend: () => 'Make several trees of it',
  },
  'entry-too-large': {
    severity: 'error',
    wrong: ({ characters, limit }) =>
      `This entry has ${characters.toLocaleString('en')} characters and is not read; ${limit.toLocaleString('en')} is the most`,
    mend: () => 'Write readings and faults with one key on each line, and keep texts short',
  },
};

const shapeWords: WordTable<ShapeFacts> = {
  'unknown-key': {
    severity: 'error',
    wrong: ({ key }) => `"${short(key)}" is no key that can stand here`,
    mend: ({ near, keys }) =>
      near.length > 0
        ? `Did you mean ${anyOf(near)}?`
        : keys.length > 0
          ? `Take it away, or use one of ${listed(keys)}`
          : 'Take it away',
  },
  'missing-key': {
    severity: 'error',
    wrong: ({ key, of }) => `"${key}" is missing in ${of}`,
    mend: ({ key }) => `Add ${keyExample(key)}`,
  },
  'empty-value': {
    severity: 'error',
    wrong: ({ key }) => `"${short(key)}" has nothing behind it`,
    mend: ({ key }) => `Write what it is, as in ${keyExample(key)}, or take the key away`,
  },
  'wrong-shape': {
    severity: 'error',
    wrong: ({ key, expected, found }) => `"${short(key)}" is a ${found} where it should be ${expected}`,
    mend: ({ expected }) => `Write ${expected}`,
  },
  'number-wanted': {
    severity: 'error',
    wrong: ({ key, text }) => `"${short(key)}" is a number, and "${short(text)}" is none`,
    mend: () => 'Write digits, with a decimal point where one is needed, and no unit',
  },
  'number-range': {
    severity: 'error',
    wrong: ({ key, number }) => `"${short(key)}" cannot be ${number}`,
    mend: ({ bound }) => `Write a number that is ${bound}`,
  },
  'word-wanted': {
    severity: 'error',
    wrong: ({ key, text }) => `"${short(key)}" cannot be "${short(text)}"`,
    mend: ({ words, near }) => (near.length > 0 ? `Did you mean ${anyOf(near)}?` : `Write ${anyOf(words)}`),
  },
};

const meaningWords: WordTable<MeaningFacts> = {
  'name-form': {
    severity: 'error',
    wrong: ({ name, of }) => `"${short(name)}" cannot be the name of ${aKind[of]}`,
    mend: ({ instead, of }) =>
      instead === null
        ? !isIdentifier(of)
          ? 'Use letters, digits, "_" and "-", 60 at the most'
          : 'Begin with a letter, and use letters, digits and "_", 60 at the most'
        : `Write "${instead}"`,
  },
  'reserved-word': {
    severity: 'error',
    wrong: ({ name, of }) => `"${name}" means something of its own and cannot be the name of ${aKind[of]}`,
    mend: () => 'Use another word',
  },
  'option-twice': {
    severity: 'error',
    wrong: ({ option }) => `The option "${option}" stands in the list twice`,
    mend: () => 'Take one of them away',
  },
  'setting-and-reading': {
    severity: 'error',
    wrong: ({ name }) => `"${name}" is both a setting and a reading`,
    mend: () => 'Give one of them another name',
  },
  'one-measure': {
    severity: 'error',
    wrong: ({ of, found }) =>
      found.length === 0
        ? `Nothing says what values this ${of} can have`
        : `${said(found)} ${found.length === 1 ? 'is not enough to say' : 'do not go together when they say'} what values this ${of} can have`,
    mend: ({ of }) =>
      ({
        setting: 'Give "unit" for a quantity, or "options" for a choice',
        parameter: 'Give "bands" for a reading, or "unit" for a quantity',
        reading:
          'Give "unit" with "expect" or "scale" for a quantity, "options" for a choice, or "codes", "beeps", "tries" or "from"',
      })[of],
  },
  'normal-missing': {
    severity: 'error',
    wrong: ({ reading }) => `Nothing says what a healthy board shows in "${reading}"`,
    mend: ({ bands }) => `Add "normal:" with one of ${listed(bands)}, or "normal: any" if nothing is judged`,
  },
  'good-not-normal': {
    severity: 'error',
    wrong: ({ reading }) => `A band of "${reading}" is called good but is not normal`,
    mend: () => 'Make "good" normal, or call the band something else: "all good" asks for normal bands',
  },
  'wait-form': {
    severity: 'error',
    wrong: ({ text }) => `"${short(text)}" is no waiting time`,
    mend: () => 'Write minutes as a number, or "30 minutes", or "2 hours"',
  },
  'share-form': {
    severity: 'error',
    wrong: ({ text }) => `"${short(text)}" is no share`,
    mend: () => 'Write a percentage, such as "70 %"',
  },
  'shares-sum': {
    severity: 'error',
    wrong: ({ sum }) => `These shares add up to ${sum} %`,
    mend: () => 'Let them add up to 100 %',
  },
  'share-range': {
    severity: 'error',
    wrong: ({ key, text }) => `"${short(key)}" cannot be ${short(text)}`,
    mend: ({ bound }) => `Write a percentage that is ${bound}`,
  },
  'brings-itself': {
    severity: 'error',
    wrong: ({ fault }) => `The fault "${short(fault)}" cannot bring itself along`,
    mend: () => 'Name the fault that it leaves behind, or take this one away',
  },
  'near-family': {
    severity: 'hint',
    wrong: ({ family, near }) => `The family "${short(family)}" is nearly ${anyOf(near)}`,
    mend: () => 'If both mean the same, write one of them everywhere: practice counts by families',
  },
  circle: {
    severity: 'error',
    wrong: ({ key, names }) => `"${key}" goes round in a circle: ${names.join(' → ')}`,
    mend: ({ key }) => `Take one "${key}" of the circle away`,
  },
  'hidden-missing': {
    severity: 'error',
    wrong: ({ reading }) => `Nothing says what "${reading}" shows while something it needs is missing`,
    mend: ({ bands }) => `Add "hidden:" with one of ${listed(bands)}`,
  },
  'missing-source': {
    severity: 'warning',
    wrong: ({ reading }) => `Nothing says why the normal bands of "${reading}" are normal`,
    mend: () => 'Add "source:" with a standard and clause, a handbook, or "common practice"',
  },
};

/** The words for problems of the front-matter. */
export const frontMatterWords: WordTable<FrontMatterFacts> = {
  ...yamlWords,
  ...shapeWords,
  ...meaningWords,
  ...declarationWords,
};

const aKind: Readonly<Record<NameKind, string>> = {
  reading: 'a reading',
  setting: 'a setting',
  fault: 'a fault',
  band: 'a band',
  option: 'an option',
  condition: 'a condition',
  'condition value': 'a value of a condition',
  member: 'one of many alike',
  parameter: 'a parameter',
  end: 'an end',
  family: 'a family of faults',
};

/** Names that formulas and clauses begin with; the others may begin with a digit and have hyphens. */
const isIdentifier = (of: NameKind): boolean =>
  ['reading', 'setting', 'fault', 'condition', 'parameter'].includes(of);

const examples: Readonly<Record<string, string>> = {
  format: 'format: 1',
  kind: 'kind: tree',
  ends: 'ends: { found: the part is known }',
  title: 'title: Board held in reset',
  symptom: 'symptom: Fans turn, the screen stays black',
  boards: 'boards: [386, 486]',
  is: 'is: 5 V at the supply connector',
};

const keyExample = (key: string): string => `"${examples[key] ?? `${key}: …`}"`;
