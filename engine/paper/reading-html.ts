import { formulaText } from '../formula/formula-text.ts';
import { type Child, type Element, element } from '../markup/index.ts';
import type { Need, Reading } from '../model/reading.ts';
import { expectedText, memberReading, settingsOf } from '../scale/index.ts';
import { answerSpace } from './answer-space.ts';
import { bandsText } from './bands-text.ts';
import { blank } from './blanks.ts';
import type { PaperContext } from './paper-context.ts';

/** One reading with where and how it is taken, what it should show, and room for what it shows. */
export function readingHtml(id: string, context: PaperContext): Child {
  const reading = context.readings.get(id);
  if (reading === undefined) return null;
  return element(
    'div',
    { class: 'reading' },
    element(
      'div',
      { class: 'taking' },
      element('p', { class: 'what' }, element('code', {}, id), ' ', reading.is),
      element('p', { class: 'how' }, howText(reading)),
    ),
    element(
      'div',
      { class: 'showing' },
      element('p', { class: 'answer' }, reading.from === null ? answerSpace(reading) : computed(reading)),
      element('p', { class: 'bands' }, bandsText(reading, context.usual)),
      shouldShow(reading, context),
    ),
  );
}

const computed = (reading: Reading): Child => [
  'Work out ',
  element('code', {}, reading.from === null ? '' : formulaText(reading.from)),
  ': ',
  answerSpace(reading),
];

/** Tools, power, conditions and points, in this order, as far as there are any. */
function howText({ with: tools, power, when, points, set, minutes, wait, onlyIf }: Reading): string {
  const parts = [
    tools.length > 0 ? `With: ${tools.join(', ')}` : '',
    power === null ? '' : `Power ${power}`,
    ...Object.entries(when).map(([condition, value]) => `${condition} ${value}`),
    points.length > 0 ? `At: ${points.map(pointText).join('; ')}` : '',
    set === null ? '' : `Set: ${set}`,
    needsText(onlyIf),
    `${minutes} min${wait > 0 ? ` and ${wait} min of waiting` : ''}`,
  ];
  return parts.filter((part) => part !== '').join(' · ');
}

const pointText = (point: string, at: number, all: readonly string[]): string =>
  all.length > 1 && at === 0 ? `${point} (red, channel 1)` : point;

/** What must have been seen before: `Only if r_v5 is good`. */
export const needsText = (needs: readonly Need[]): string =>
  needs.length === 0
    ? ''
    : `Only if ${needs.map(({ reading, bands }) => `${reading} is ${bands.join(' or ')}`).join(' and ')}`;

function shouldShow(reading: Reading, { usual, tree }: PaperContext): Element | null {
  if (reading.normal === 'any') return null;
  const { measure } = memberReading(reading);
  const own = new Set(tree.settings.map(({ id }) => id));
  const settings = settingsOf(reading).filter((name) => own.has(name));
  const written = measure.kind === 'quantity' ? measure.scale.written : '';
  return element(
    'p',
    { class: 'expected' },
    'Should show ',
    element('b', {}, expectedText(reading, usual)),
    settings.length > 0 &&
      measure.kind === 'quantity' && [
        ' at the usual settings, by ',
        element('code', {}, written),
        '. On this board: ',
        blank('short'),
        ' to ',
        blank('short'),
      ],
  );
}
