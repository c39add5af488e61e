import { short } from './phrases.ts';
import type { Example, TreeRuleFacts } from './tree-rule-facts.ts';
import type { WordTable } from './words.ts';

const said = (example: Example): string => {
  const parts = example.map(({ name, band }) => `${name} ${band}`);
  return parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
};

/** The words for problems of a tree as a whole. */
export const treeRuleWords: WordTable<TreeRuleFacts> = {
  'not-a-tree': {
    severity: 'error',
    wrong: ({ kind }) =>
      `This file is ${kind === 'shared' ? 'one of shared readings' : `a ${kind}`}, not a tree`,
    mend: () => 'Only trees can be compiled and walked; a tree says "kind: tree"',
  },
  'no-sections': {
    severity: 'error',
    wrong: () => 'This tree has no sections',
    mend: () => 'Begin the first with "## " and a title',
  },
  'uncovered-combination': {
    severity: 'error',
    wrong: ({ example }) => `${said(example)} leads nowhere`,
    mend: ({ combinations }) =>
      combinations > 1
        ? `Add outcomes for this and ${combinations - 1} more combinations, or an "otherwise" line`
        : 'Add an outcome for it, or an "otherwise" line',
  },
  'too-many-combinations': {
    severity: 'error',
    wrong: () => 'This check has too many combinations to look through all of them',
    mend: () => 'Read fewer things at once: make two sections of it',
  },
  'outcome-never-matches': {
    severity: 'warning',
    wrong: ({ written }) =>
      `"${short(written)}" can never be taken, because the lines above it take everything it fits`,
    mend: () => 'Move it up, or take it away',
  },
  'unreachable-section': {
    severity: 'warning',
    wrong: ({ title }) => `No walk comes to the section "${short(title)}"`,
    mend: () => 'Link to it from an outcome or a Then, or take it away',
  },
  'no-way-on': {
    severity: 'error',
    wrong: ({ titles }) =>
      titles.length === 1
        ? `The section "${short(titles[0] ?? '')}" only leads back to itself`
        : `A walk goes round for ever: ${titles.map((title) => `"${short(title)}"`).join(' → ')}`,
    mend: () => 'Let one outcome lead on to a fault or a stop',
  },
  'loop-without-reading': {
    severity: 'error',
    wrong: ({ titles }) =>
      titles.length === 1
        ? `The work of "${short(titles[0] ?? '')}" leads to itself, and nothing is read in between`
        : `Work goes round for ever and nothing is read in between: ${titles.map((title) => `"${short(title)}"`).join(' → ')}`,
    mend: () => 'Lead on to a check that can end it',
  },
  'fault-without-section': {
    severity: 'error',
    wrong: ({ fault }) => `No section is about the fault "${fault}", so it can never be found`,
    mend: ({ fault }) => `Add a section with: Fault \`${fault}\`.`,
  },
  'fault-with-two-sections': {
    severity: 'error',
    wrong: ({ fault, first }) => `The fault "${fault}" already has the section "${short(first)}"`,
    mend: () => 'Lead both ways to one section',
  },
  'brought-without-section': {
    severity: 'warning',
    wrong: ({ fault, brought }) =>
      `"${fault}" brings "${brought}" along, and no section of this tree is about that`,
    mend: ({ brought }) => `Add a section with: Fault \`${brought}\`. Or take it out of "brings"`,
  },
  'end-without-proof': {
    severity: 'warning',
    wrong: ({ title }) => `Nothing proves that the remedy of "${short(title)}" worked`,
    mend: () => 'Add the readings to take again: Prove `a`, `b`.',
  },
  'unused-reading': {
    severity: 'warning',
    wrong: ({ reading }) => `No section reads "${reading}"`,
    mend: () => 'Read it in a check, or take it away',
  },
  'unused-setting': {
    severity: 'warning',
    wrong: ({ setting }) => `Nothing uses the setting "${setting}"`,
    mend: () => 'Use it in a limit, a condition or the prose, or take it away',
  },
  'symptom-not-shown': {
    severity: 'error',
    wrong: ({ fault, reading, band }) => `The fault "${fault}" cannot show the symptom, ${reading} ${band}`,
    mend: ({ reading }) => `Let its "shows" say so, or take "${reading}" out of "given"`,
  },
};
