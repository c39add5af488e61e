import type { FileKind, LinkFacts } from './body-facts.ts';
import { anyOf, listed, short } from './phrases.ts';
import type { WordTable } from './words.ts';

const meant = (near: readonly string[], fallback: string): string =>
  near.length === 0 ? fallback : `Did you mean ${anyOf(near)}?`;

const fileKinds: Readonly<Record<FileKind, readonly [string, string]>> = {
  tree: ['A tree', 'Write End in a procedure; a tree ends with Fault or Stop'],
  procedure: ['A procedure', 'End the procedure with End, and let the tree that follows it name the fault'],
  shared: ['A file of shared readings', 'Write it in a tree or in a procedure, and only prose here'],
};

/** The words for problems with the names in a body. */
export const linkWords: WordTable<LinkFacts> = {
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
  'not-many': {
    severity: 'error',
    wrong: ({ name }) => `"${name}" is one reading and not many alike`,
    mend: ({ name, band, given }) =>
      given === true ? `Give the reading itself: \`${name}\`` : `Write: ${name} is ${short(band)}`,
  },
  'one-that-is-normal': {
    severity: 'error',
    wrong: ({ name, band }) => `"${band}" is normal for "${name}", and no single one is found by it`,
    mend: ({ wrong }) => `Name a band out of normal, one of ${listed(wrong)}`,
  },
  'how-many': {
    severity: 'error',
    wrong: ({ name, band }) => `Nothing says how many of "${name}" are "${short(band)}"`,
    mend: ({ told }) => `Ask for one of ${listed(told)}`,
  },
  'members-untold': {
    severity: 'error',
    wrong: ({ name }) => `What is kept of "${name}" does not tell this`,
    mend: ({ told }) => `What can be told is ${listed(told)}`,
  },
  'no-condition-named': {
    severity: 'error',
    wrong: ({ name }) => `No condition of the board is called "${short(name)}"`,
    mend: ({ near }) => meant(near, 'Declare it in the front-matter: conditions: { cards: [in, out] }'),
  },
  'no-value-named': {
    severity: 'error',
    wrong: ({ name, value }) => `"${name}" cannot be "${short(value)}"`,
    mend: ({ near, values }) => meant(near, `Use one of ${listed(values)}`),
  },
  'setting-not-seen': {
    severity: 'error',
    wrong: ({ name }) => `"${name}" is a setting, and Only if speaks of what was read`,
    mend: () => 'Ask for the setting in the outcomes of a check that leads here',
  },
  'tries-not-counted': {
    severity: 'error',
    wrong: ({ name }) => `"${name}" does not count tries`,
    mend: () => 'Take the number away, or declare the reading with "tries: 20"',
  },
  'too-few-tries': {
    severity: 'warning',
    wrong: ({ name, tries, enough }) =>
      `${tries} tries do not settle "${name}", which asks for ${enough} in a row`,
    mend: ({ enough, name }) => `Write ${enough} of ${enough} \`${name}\`, or name it without a number`,
  },
  'wrong-file-kind': {
    severity: 'error',
    wrong: ({ word, kind }) => `${fileKinds[kind][0]} has no "${word}"`,
    mend: ({ kind }) => fileKinds[kind][1],
  },
};
