import type { CaseFacts } from './case-facts.ts';
import { anyOf } from './phrases.ts';
import type { WordTable } from './words.ts';

const what = { tree: 'tree', board: 'board sheet' } as const;

/** The words for problems of a case. */
export const caseWords: WordTable<CaseFacts> = {
  'case-without-answers': {
    severity: 'error',
    wrong: () => 'This case has no answers',
    mend: () => 'Write them as a numbered list: "1. `v5` = 4.98 V"',
  },
  'second-answer-list': {
    severity: 'error',
    wrong: () => 'This is a second numbered list, and a case is one',
    mend: () => 'Put the answers of both into the first, or write this one with "-"',
  },
  'empty-answer': {
    severity: 'error',
    wrong: () => 'This answer is empty',
    mend: () => 'Write what the technician types, or take the line away',
  },
  'case-without-end': {
    severity: 'error',
    wrong: () => 'Nothing says where this case must lead',
    mend: () => 'End with "Leads to [Title](../trees/tree.md#section)." or "Leads to a mended board."',
  },
  'case-end-form': {
    severity: 'error',
    wrong: ({ text }) => `"${text}" does not say where the case must lead`,
    mend: () => 'Write "Leads to [Title](../trees/tree.md#section)." or "Leads to a mended board."',
  },
  'case-end-elsewhere': {
    severity: 'error',
    wrong: ({ url }) => `"${url}" is no section of a tree that this case walks`,
    mend: ({ trees }) => `Name a section of ${anyOf(trees)}, as "${trees[0] ?? 'tree.md'}#section"`,
  },
  'case-file-missing': {
    severity: 'error',
    wrong: ({ of, path }) => `There is no ${what[of]} "${path}"`,
    mend: () => 'Write its path from the folder of this case',
  },
  'case-file-broken': {
    severity: 'error',
    wrong: ({ of, path }) => `The ${what[of]} "${path}" has errors, so this case cannot be walked`,
    mend: ({ of }) => `Check the ${what[of]} and mend it first`,
  },
  'no-setting-named': {
    severity: 'error',
    wrong: ({ name }) => `There is no setting "${name}" in the tree`,
    mend: ({ near }) =>
      near.length === 0 ? 'Name a setting of the tree, or take this away' : `Did you mean ${anyOf(near)}?`,
  },
};
