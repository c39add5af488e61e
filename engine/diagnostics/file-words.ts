import type { BesideFacts, NamedKind } from './file-facts.ts';
import { anyOf, listed, said, short } from './phrases.ts';
import type { WordTable } from './words.ts';

const kinds: Readonly<Record<NamedKind, string>> = {
  shared: 'a file of shared readings ("kind: shared")',
  procedure: 'a procedure ("kind: procedure")',
  tree: 'a tree ("kind: tree")',
};

/** The words for problems between files. */
export const fileWords: WordTable<BesideFacts> = {
  'no-file': {
    severity: 'error',
    wrong: ({ path, alone }) =>
      alone
        ? `"${short(path)}" is not beside this file: only this one was given`
        : `There is no file "${short(path)}"`,
    mend: ({ near, wanted, alone }) => {
      if (near.length > 0) return `Did you mean ${anyOf(near)}?`;
      if (alone) return 'Check the folder that holds both files';
      return `Name ${kinds[wanted]}; paths count from the folder of this file`;
    },
  },
  'other-file-kind': {
    severity: 'error',
    wrong: ({ path, kind }) => `"${short(path)}" is of kind "${short(kind)}"`,
    mend: ({ wanted }) => `Name ${kinds[wanted]} here`,
  },
  'files-in-circle': {
    severity: 'error',
    wrong: ({ by, names }) =>
      by === 'uses'
        ? `These files include each other: ${names.map(short).join(' → ')}`
        : `These procedures follow each other: ${names.map(short).join(' → ')}`,
    mend: ({ by }) =>
      by === 'uses'
        ? 'Move what they share into a file of its own, and let both use that one'
        : 'Take one step out of the circle: a procedure never comes back to itself',
  },
  'no-section-there': {
    severity: 'error',
    wrong: ({ slug, path }) => `No section of "${short(path)}" is called "#${short(slug)}"`,
    mend: ({ near }) =>
      near.length > 0 ? `Did you mean ${anyOf(near.map((one) => `#${one}`))}?` : 'Name the file alone',
  },
  'file-broken': {
    severity: 'error',
    wrong: ({ path, errors }) => `"${short(path)}" has ${errors} error${errors === 1 ? '' : 's'} of its own`,
    mend: () => 'Check that file, and mend it first',
  },
  'declared-elsewhere': {
    severity: 'error',
    wrong: ({ name, first, second }) =>
      `"${short(name)}" is one thing in "${short(first)}" and another in "${short(second)}"`,
    mend: () => 'Give one of the two another name, or declare it once in a file that both use',
  },
  'argument-missing': {
    severity: 'error',
    wrong: ({ procedure, parameter, is }) =>
      `"${short(procedure)}" needs \`${parameter}\`${is === parameter ? '' : ` (${short(is)})`}`,
    mend: ({ parameter }) => `Give it in the Follow line: with \`${parameter}\` = …`,
  },
  'no-parameter-named': {
    severity: 'error',
    wrong: ({ name }) => `The procedure takes nothing called "${short(name)}"`,
    mend: ({ near, takes }) => {
      if (near.length > 0) return `Did you mean ${anyOf(near)}?`;
      return takes.length > 0 ? `It takes ${listed(takes)}` : 'It takes nothing: leave the "with" out';
    },
  },
  'argument-bands': {
    severity: 'error',
    wrong: ({ parameter, reading, lacks }) =>
      `"${short(parameter)}" must be able to read ${said(lacks)}, and "${short(reading)}" has no such band`,
    mend: () => 'Give a reading with these bands, or ask the procedure for fewer',
  },
  'end-not-taken': {
    severity: 'error',
    wrong: ({ procedure, ends }) => `"${short(procedure)}" can end ${said(ends)}, and no outcome takes that`,
    mend: () => 'Add a line for it, or "otherwise"',
  },
  'ends-only': {
    severity: 'error',
    wrong: ({ name }) =>
      `"${short(name)}" is no end of the procedure, and only its ends can be told apart here`,
    mend: ({ ends }) => `Tell ${listed(ends)} apart here, and ask for the rest in a check of its own`,
  },
  'call-does-not-fit': {
    severity: 'error',
    wrong: ({ procedure, where, says }) =>
      `"${short(procedure)}" does not work with what it is given here. In "${short(where)}": ${says}`,
    mend: () => 'Give it something else, or let the procedure provide for this',
  },
  'too-many-states': {
    severity: 'error',
    wrong: ({ count, limit, chain }) =>
      `With its procedures the tree has ${count > 1e9 ? 'far too many' : count} states, and ${limit} is the most. The most come by ${chain.map(short).join(' → ')}`,
    mend: () => 'Follow fewer procedures, or make of one check what is now a procedure',
  },
  'no-end-named': {
    severity: 'error',
    wrong: ({ name }) => `The procedure declares no end called "${short(name)}"`,
    mend: ({ near, ends }) => {
      if (near.length > 0) return `Did you mean ${anyOf(near)}?`;
      return ends.length > 0
        ? `It ends with ${listed(ends)}`
        : 'Declare it under "ends:" in the front-matter';
    },
  },
  'end-without-section': {
    severity: 'warning',
    wrong: ({ end }) => `No section ends the procedure with "${short(end)}"`,
    mend: ({ end }) => `Add a section with "End \`${short(end)}\`.", or take the end out`,
  },
  'unused-parameter': {
    severity: 'warning',
    wrong: ({ parameter }) => `The procedure makes no use of "${short(parameter)}"`,
    mend: () => 'Use it, or take it out of "takes:"',
  },
};
