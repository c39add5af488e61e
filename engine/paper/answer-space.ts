import { type Child, element } from '../markup/index.ts';
import type { Measure, Reading } from '../model/reading.ts';
import { blank, ticks } from './blanks.ts';

/** Whether choices stand with what they mean, or alone because that was said before. */
export type Fullness = 'with meanings' | 'names only';

type Spaces = {
  readonly [Kind in Measure['kind']]: (
    measure: Extract<Measure, { kind: Kind }>,
    normal: Reading['normal'],
    fullness: Fullness,
  ) => Child;
};

const spaces: Spaces = {
  quantity: ({ unit }) => [blank('short'), ` ${unit}`],
  options: ({ options }, normal, fullness) =>
    ticks(
      options.map(({ name, means }) => [
        normal !== 'any' && normal.includes(name) ? element('b', {}, name) : name,
        fullness === 'with meanings' && means !== null && element('small', {}, `: ${means}`),
      ]),
    ),
  codes: () => blank('short'),
  beeps: () => blank('medium'),
  tries: () => [blank('short'), ' of ', blank('short')],
  each: ({ members, of, normal }) =>
    element(
      'span',
      { class: 'members' },
      members.map((member) =>
        element('span', { class: 'member' }, `${member} `, spaceOf(of, normal, 'names only')),
      ),
    ),
};

const spaceOf = (measure: Measure, normal: Reading['normal'], fullness: Fullness): Child =>
  spaces[measure.kind](measure as never, normal, fullness);

/** Room for what a reading shows: a line with its unit, boxes for choices, one of them for each of many alike. */
export const answerSpace = ({ measure, normal }: Reading, fullness: Fullness = 'with meanings'): Child =>
  spaceOf(measure, normal, fullness);
