import type { DeclarationFacts, Declared } from './front-matter-facts.ts';
import { anyOf, listed, short } from './phrases.ts';
import type { WordTable } from './words.ts';

const meant = (near: readonly string[], fallback: string): string =>
  near.length === 0 ? fallback : `Did you mean ${anyOf(near)}?`;

/** The words for what can be wrong where readings are derived, many alike, taken in conditions, or known from other files. */
export const declarationWords: WordTable<DeclarationFacts> = {
  'name-clash': {
    severity: 'error',
    wrong: ({ name, of, other, elsewhere }) =>
      elsewhere && of === other
        ? `A file that is used declares the ${of} "${name}" as well, and says something else of it`
        : `"${name}" is ${aDeclared[of]} here, and ${aDeclared[other]}${elsewhere ? ' of a file that is used' : ''}`,
    mend: ({ of, other }) =>
      of === 'reading' && other === 'reading'
        ? 'Take this one away, or give it another name; "like" takes over what the other says'
        : 'Take one of them away, or give it another name',
  },
  'when-form': {
    severity: 'error',
    wrong: ({ text }) => `"${short(text)}" is no condition with its value`,
    mend: () => 'Write "cards out", or several with commas between: "cards out, cpu out"',
  },
  'no-tool-named': {
    severity: 'error',
    wrong: ({ name }) => `"${short(name)}" is not in the list of "tools"`,
    mend: ({ near }) => meant(near, 'Add it there, or name a tool of the list'),
  },
  'no-class-named': {
    severity: 'error',
    wrong: ({ name }) => `"${short(name)}" is no board class of this tree`,
    mend: ({ near, boards }) => meant(near, `Use one of ${listed(boards)}, or add it to "boards"`),
  },
  'no-input-named': {
    severity: 'error',
    wrong: ({ name }) => `Neither a reading nor a setting is called "${short(name)}"`,
    mend: ({ near }) => meant(near, 'Name a reading that is a quantity, or a setting with a unit'),
  },
  'input-not-number': {
    severity: 'error',
    wrong: ({ name, of }) => `The ${of} "${name}" is no quantity, and formulas compute with quantities`,
    mend: () => 'Name a reading or a setting with a unit',
  },
  'derived-key': {
    severity: 'error',
    wrong: ({ key, compares }) =>
      compares
        ? `A comparison gives yes or no, and has no use for "${key}"`
        : `A reading with "from" is computed, and has no use for "${key}"`,
    mend: ({ key }) => `Take "${key}" away`,
  },
  'each-size': {
    severity: 'error',
    wrong: ({ count }) =>
      count === 1 ? 'One is not many alike' : `${count} are too many to be typed as one row`,
    mend: ({ least, most }) => `Name ${least} to ${most} of them`,
  },
  'member-is-band': {
    severity: 'error',
    wrong: ({ name }) =>
      `"${name}" is both one of many alike and a band, and a typed row could not tell which is meant`,
    mend: () => 'Give one of them another name',
  },
  'each-bands': {
    severity: 'error',
    wrong: ({ wrong }) => `${wrong.length} bands of one are out of normal: ${listed(wrong)}`,
    mend: ({ most }) => `Have ${most} at the most, so that the whole has few enough bands`,
  },
  'each-not-judged': {
    severity: 'error',
    wrong: () => 'The bands of many alike say how many are out of normal, and here nothing is normal',
    mend: () => 'Give the bands in which one of them is normal',
  },
  'shows-how-many': {
    severity: 'error',
    wrong: ({ reading }) => `How many of "${reading}" show it is not said`,
    mend: ({ bands: [band = ''] }) =>
      `Write { one: ${band} }, { several: ${band} }, { all: ${band} } or { any: ${band} }`,
  },
  'usual-not-quantity': {
    severity: 'error',
    wrong: ({ reading }) => `"${reading}" is no quantity, and "usual" is a value that limits compute with`,
    mend: () => 'Take "usual" away',
  },
  'parameter-bands': {
    severity: 'error',
    wrong: ({ parameter }) => `What is normal for "${parameter}" is known to the caller only`,
    mend: ({ parameter, bands }) => `Write the bands: { ${parameter}: [${bands.slice(-1).join()}] }`,
  },
};

const aDeclared: Readonly<Record<Declared, string>> = {
  reading: 'a reading',
  setting: 'a setting',
  fault: 'a fault',
  condition: 'a condition',
  parameter: 'a parameter',
};
