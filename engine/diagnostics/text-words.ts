import type { TextProblemFacts } from '../model/text-problem.ts';
import type { WordTable } from './words.ts';

const short = (text: string): string => (text.length > 60 ? `${text.slice(0, 57)}…` : text);
const unitName = (unit: string): string => (unit === '' ? 'a plain number' : `"${unit}"`);
const inUnit = (unit: string): string => (unit === '' ? 'a plain number' : `in "${unit}"`);
const meant = (near: readonly string[], fallback: string): string =>
  near.length === 0 ? fallback : `Did you mean ${near.map((name) => `"${name}"`).join(' or ')}?`;
const at = (when: string | null): string => (when === null ? '' : ` at ${when}`);

/** The words for problems inside quantities, formulas, scales and codes. */
export const textWords: WordTable<TextProblemFacts> = {
  'not-a-quantity': {
    severity: 'error',
    wrong: ({ text }) => `"${short(text)}" is not a number with a unit`,
    mend: ({ near }) =>
      near === null ? 'Write a number and its unit, such as "4.75 V"' : `Write "${short(near)}"`,
  },
  'unknown-unit': {
    severity: 'error',
    wrong: ({ unit }) => `"${short(unit)}" is not a unit`,
    mend: ({ near }) =>
      near === null
        ? 'Use V, A, Ω, Hz, s, F, H, W, °C, °F, % or ppm with the usual prefixes, and "*" between a number and a name'
        : `Write "${near}"`,
  },
  'wrong-unit': {
    severity: 'error',
    wrong: ({ unit, expected }) => `This is in ${unitName(unit)}, but ${unitName(expected)} is wanted`,
    mend: ({ expected }) =>
      expected === '' ? 'Give a plain number' : `Give a value that can be shown in "${expected}"`,
  },
  'decimal-comma': {
    severity: 'error',
    wrong: ({ text }) => `"${short(text)}" has a decimal comma, and files use the point`,
    mend: ({ instead }) => `Write "${short(instead)}"`,
  },
  'scale-shape': {
    severity: 'error',
    wrong: ({ expected, found }) =>
      found === ''
        ? `The scale lacks ${expected}`
        : `The scale needs ${expected} where it has "${short(found)}"`,
    mend: () => 'Let bands and limits take turns, low end first: "low < 4.75 V < good < 5.25 V < high"',
  },
  'expect-shape': {
    severity: 'error',
    wrong: ({ found }) => `"${short(found)}" is not a form that "expect" has`,
    mend: () =>
      'Write "5 V ± 5 %", "4 V .. 5.25 V", "at least 4 V" or "at most 0.7 V", or name the bands with "scale"',
  },
  'tolerance-of': {
    severity: 'error',
    wrong: ({ what }) =>
      ({
        percent: 'A tolerance in per cent of a percentage can be read in two ways',
        zero: 'A tolerance in per cent of zero is nothing',
        temperature: 'A tolerance in per cent of a temperature depends on where its scale begins',
      })[what],
    mend: ({ instead }) =>
      instead === null
        ? 'Give the tolerance as a value with its unit, such as "0 V ± 0.1 V"'
        : `Write the two ends, such as "${instead}"`,
  },
  'no-tolerance': {
    severity: 'error',
    wrong: ({ nominal }) => `"${short(nominal)}" stands alone, and no reading is ever exactly that`,
    mend: ({ nominal }) =>
      `Say how far off is still good: "${short(nominal)} ± …" with a percentage or a value`,
  },
  'limits-order': {
    severity: 'error',
    wrong: ({ lower, upper, when }) =>
      lower === upper
        ? `Two limits are equal, ${lower}, and leave nothing between them${at(when)}`
        : `The limits run the wrong way: ${lower} stands below ${upper}${at(when)}`,
    mend: () => 'Put the low end first, and make each limit higher than the one before it',
  },
  'same-band-twice': {
    severity: 'error',
    wrong: ({ band }) => `The band "${band}" stands in the scale twice`,
    mend: () => 'Give each band a name of its own',
  },
  'formula-syntax': {
    severity: 'error',
    wrong: ({ expected, found }) =>
      `The formula needs ${expected} and has ${found === 'the end' ? found : `"${short(found)}"`}`,
    mend: () => 'Write it with quantities, names of settings, + - * / and brackets: "fsb * 2", "vcc * 60 %"',
  },
  'unlike-units': {
    severity: 'error',
    wrong: ({ left, right, leftText, rightText }) =>
      `"${short(leftText)}" is ${inUnit(left)} and "${short(rightText)}" is ${inUnit(right)}: they cannot be added or compared`,
    mend: () => 'Bring both to one kind of quantity',
  },
  'unknown-name': {
    severity: 'error',
    wrong: ({ name }) => `There is no setting "${name}"`,
    mend: ({ near }) => meant(near, 'Declare it under "settings", with its unit'),
  },
  'unknown-function': {
    severity: 'error',
    wrong: ({ name }) => `There is no function "${name}"`,
    mend: ({ near }) =>
      meant(near, 'Use min, max, abs, ratio, factor or spread; between a name and a bracket write "*"'),
  },
  'not-a-number': {
    severity: 'error',
    wrong: ({ name }) => `The setting "${name}" is a choice, and formulas compute with quantities`,
    mend: ({ name }) =>
      `Ask it in a condition ("${name} is …"), or give the value a setting of its own, with a unit`,
  },
  'division-by-zero': {
    severity: 'error',
    wrong: ({ when }) => `This divides by zero${at(when)}`,
    mend: () => 'Change the formula, so that what stands below the line is never zero',
  },
  'code-shape': {
    severity: 'error',
    wrong: ({ found }) => `"${short(found)}" is not a code or a run of codes`,
    mend: ({ digits }) =>
      digits === null
        ? 'Write hexadecimal digits, such as "0D", a run such as "10..1F", or "none" for a dark display'
        : `Write ${digits} hexadecimal digits like the other codes, a run of them such as "${'0'.repeat(digits)}..${'F'.repeat(digits)}", low end first, or "none"`,
  },
  'code-overlap': {
    severity: 'error',
    wrong: ({ found, other }) => `"${short(found)}" has codes that "${other}" has already`,
    mend: () => 'Let each code stand in one row only',
  },
  'beep-shape': {
    severity: 'error',
    wrong: ({ found }) => `"${short(found)}" is not a beep pattern`,
    mend: () =>
      'Write the beeps as they are heard, "long short short" or "1 long 2 short", groups of beeps as "1-3-3", or "none" for silence',
  },
  'beep-twice': {
    severity: 'error',
    wrong: ({ found, other }) =>
      found === other
        ? `The beep pattern "${short(found)}" stands here twice`
        : `"${short(found)}" is the same beep pattern as "${short(other)}"`,
    mend: () => 'Let each pattern stand in one row only',
  },
};
