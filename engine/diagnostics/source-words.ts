import type { SourceFacts } from './source-facts.ts';
import type { WordTable } from './words.ts';

const number = (value: number): string => value.toLocaleString('en');

/** The words for problems of the file as text. */
export const sourceWords: WordTable<SourceFacts> = {
  'file-too-large': {
    severity: 'error',
    wrong: ({ characters, limit }) =>
      `The file has ${number(characters)} characters; ${number(limit)} is the most`,
    mend: () => 'Make several trees of it; pictures belong into files of their own',
  },
  'section-too-large': {
    severity: 'error',
    wrong: ({ characters, limit }) =>
      `This section has ${number(characters)} characters and is not looked at; ${number(limit)} is the most`,
    mend: () => 'Make several sections of it; pictures belong into files of their own',
  },
  'section-too-busy': {
    severity: 'error',
    wrong: ({ what, count, limit }) =>
      `This section has ${number(count)} ${what} and is not looked at; ${number(limit)} is the most`,
    mend: () => 'Make several sections of it',
  },
  'too-many-sections': {
    severity: 'error',
    wrong: ({ count, limit }) =>
      `The file has ${number(count)} sections; from the ${number(limit + 1)}st on they are not looked at`,
    mend: () => 'Make several trees of it',
  },
  'block-not-closed': {
    severity: 'error',
    wrong: ({ mark }) => `What "${mark}" begins has no end and takes in the sections below`,
    mend: ({ mark }) =>
      /^[`~]/.test(mark)
        ? `Close the block with a line "${mark}"`
        : 'Take the HTML away; to show "<" itself, write "\\<"',
  },
  'nesting-too-deep': {
    severity: 'error',
    wrong: ({ depth, limit }) =>
      `Lists and quotes lie ${number(depth)} deep in each other on this line, and the section is not looked at; ${limit} is the most`,
    mend: () => 'Take list and quote marks away',
  },
  'backticks-too-many': {
    severity: 'error',
    wrong: ({ count, limit }) =>
      `${number(count)} backticks stand in a row here, and the section is not looked at; ${limit} is the most`,
    mend: () => 'Use one backtick for a name, and three for a block',
  },
  'front-matter-start': {
    severity: 'error',
    wrong: ({ found }) =>
      ({
        'blank lines': 'Blank lines stand above the first "---"',
        facts: 'The facts begin without a line "---" above them',
        'another mark': 'The first line is not "---"',
        nothing: 'The file does not begin with "---" and its facts',
      })[found],
    mend: ({ found }) =>
      ({
        'blank lines': 'Let "---" be the very first line',
        facts: 'Put "---" above them as the first line',
        'another mark': 'Write three hyphens and nothing else',
        nothing: 'Begin with "---", "format: 1", "kind: tree"; the whole form is in schema/README.md',
      })[found],
  },
  'front-matter-end': {
    severity: 'error',
    wrong: ({ found }) =>
      found === 'nothing'
        ? 'The facts have no line "---" below them'
        : 'The line below the facts is not "---"',
    mend: ({ found }) =>
      found === 'nothing'
        ? 'Put "---" between the facts and the body'
        : 'Write three hyphens and nothing else',
  },
};
