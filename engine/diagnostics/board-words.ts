import type { BoardFacts } from './board-facts.ts';
import { anyOf, listed, said, short } from './phrases.ts';
import type { WordTable } from './words.ts';

/** The words for problems of board sheets. */
export const boardWords: WordTable<BoardFacts> = {
  'near-shared-name': {
    severity: 'warning',
    wrong: ({ of, name }) => `No shared file declares a ${of} "${short(name)}"`,
    mend: ({ near }) => `Did you mean ${anyOf(near)}?`,
  },
  'listed-twice': {
    severity: 'error',
    wrong: ({ key, name }) => `"${short(name)}" stands in "${key}" twice`,
    mend: () => 'Take one of them away',
  },
  'no-socket-named': {
    severity: 'error',
    wrong: ({ name }) => `No socket is called "${short(name)}"`,
    mend: ({ near }) =>
      near.length > 0 ? `Did you mean ${anyOf(near)}?` : 'Name it under "sockets", or take it away',
  },
  'sheet-lead-line': {
    severity: 'error',
    wrong: ({ word }) => `A board sheet has no "${word}" line: nobody walks through it`,
    mend: () => 'Write it as plain prose, or put it into a tree or a procedure',
  },

  'sheet-limits': {
    severity: 'error',
    wrong: ({ reading, found }) =>
      found.length === 0
        ? `Nothing says what is different in "${reading}" on this board`
        : `${said(found)} do not go together when they say what is different in "${reading}"`,
    mend: () => 'Give one of "expect", "scale", "codes" or "beeps"',
  },
  'sheet-bands-differ': {
    severity: 'error',
    wrong: ({ reading, bands, expected }) =>
      `"${reading}" has the bands ${listed(expected)}, and here ${listed(bands)}`,
    mend: () => 'Use all bands of the reading in their order: a board moves limits and codes, never bands',
  },
  'sheet-measure-differs': {
    severity: 'error',
    wrong: ({ reading, wanted }) => `"${reading}" is declared with ${wanted}, which this does not change`,
    mend: ({ wanted }) =>
      ['options', 'tries'].includes(wanted)
        ? 'Take it away: what can be chosen or counted is the same on every board'
        : `Give ${wanted === 'a unit' ? '"expect" or "scale"' : `"${wanted}"`}`,
  },
  'sheet-unit': {
    severity: 'error',
    wrong: ({ reading }) => `Nothing says what unit "${reading}" has`,
    mend: () => 'Name the shared file that declares it under "uses:", or add "unit:"',
  },

  'jumper-name': {
    severity: 'error',
    wrong: ({ of, name }) => `"${short(name)}" cannot be the name of a ${of}`,
    mend: () => 'Use one word of letters, digits, ".", "_" and "-", 24 at the most: JP12, 2-3, open',
  },
  'positions-form': {
    severity: 'error',
    wrong: ({ found }) =>
      found === '' ? 'These positions end after a name' : `"${short(found)}" is no jumper with its position`,
    mend: () => 'Write each jumper and its position, with "+" between: JP12 1-2 + JP13 open',
  },
  'no-jumper-named': {
    severity: 'error',
    wrong: ({ name }) => `No jumper is called "${short(name)}"`,
    mend: ({ near }) =>
      near.length > 0
        ? `Did you mean ${anyOf(near)}?`
        : 'Declare it under "jumpers:" with "is" and "positions"',
  },
  'no-position-named': {
    severity: 'error',
    wrong: ({ jumper, position }) => `${jumper} has no position "${short(position)}"`,
    mend: ({ near, positions }) =>
      near.length > 0 ? `Did you mean ${anyOf(near)}?` : `It has ${listed(positions)}`,
  },
  'jumper-twice': {
    severity: 'error',
    wrong: ({ jumper }) => `${jumper} cannot be in two positions at once`,
    mend: () => 'Make two rows of it',
  },
  'positions-overlap': {
    severity: 'error',
    wrong: ({ setting, positions, value, other }) =>
      `${positions} makes ${value} of "${setting}" here, and ${other} in a row above`,
    mend: () => 'Name the jumper that tells the two rows apart in both of them, or correct one',
  },
  'positions-uncovered': {
    severity: 'hint',
    wrong: ({ setting, example, more }) =>
      `No row of "${setting}" says what ${example} does${more === 0 ? '' : `, the first of ${(more + 1).toLocaleString('en')} such positions`}`,
    mend: () => 'Add a row if it is known; if the positions are forbidden, leave it as it is',
  },
  'jumper-table-large': {
    severity: 'error',
    wrong: ({ rows, limit }) =>
      `This table has ${rows.toLocaleString('en')} rows and is not looked at; ${limit.toLocaleString('en')} is the most`,
    mend: () =>
      'Leave out the jumpers that change nothing: a jumper that a row does not name may sit anywhere',
  },

  'picture-missing': {
    severity: 'error',
    wrong: ({ file }) => `There is no picture "${short(file)}" beside this sheet`,
    mend: () => 'Put the file there, or correct its name',
  },
  'picture-kind': {
    severity: 'error',
    wrong: ({ file }) => `"${short(file)}" is not an SVG, PNG or JPEG file`,
    mend: () => 'Save the picture as .svg, .png or .jpg',
  },
  'unused-picture': {
    severity: 'hint',
    wrong: ({ picture }) => `No point lies on the picture "${picture}"`,
    mend: () => 'Add points on it, or take it away: every job carries it along',
  },
  'no-picture-named': {
    severity: 'error',
    wrong: ({ name }) => `No picture is called "${short(name)}"`,
    mend: ({ near, pictures }) =>
      near.length > 0
        ? `Did you mean ${anyOf(near)}?`
        : pictures.length > 0
          ? `Use ${anyOf(pictures)}, or declare it under "pictures:"`
          : 'Declare it under "pictures:" with "file" and "is"',
  },
  'point-place': {
    severity: 'error',
    wrong: ({ lacks }) => `This point has a place on a picture but lacks ${said(lacks)}`,
    mend: () => 'Give "picture", "x" and "y" together, or only "is" where words will do',
  },
  'point-per-cent': {
    severity: 'error',
    wrong: ({ key, text }) => `"${short(text)}" is no place for "${key}"`,
    mend: ({ key }) =>
      `Write per cent of the picture's ${key === 'x' ? 'width, from its left edge' : 'height, from its upper edge'}: "${key}: 31 %"`,
  },

  'reference-day': {
    severity: 'error',
    wrong: ({ text }) => `"${short(text)}" is not a day of the calendar`,
    mend: () => 'Write year, month and day: 2026-03-02',
  },
  'reference-quantity': {
    severity: 'error',
    wrong: ({ reading }) => `"${reading}" is no quantity, and a reference is one`,
    mend: () => 'Take it away: what a good board shows there is its normal band',
  },
};
