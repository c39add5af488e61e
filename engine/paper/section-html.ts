import { type Child, type Element, element } from '../markup/index.ts';
import type { Fault } from '../model/fault.ts';
import type { Remedy, Section } from '../model/section.ts';
import { expectedText } from '../scale/index.ts';
import { broughtText } from '../suspects/brought-text.ts';
import { answerSpace } from './answer-space.ts';
import { blank, tick } from './blanks.ts';
import { anchorOf, goTo } from './go-to.ts';
import { hazardsHtml } from './hazard-html.ts';
import type { PaperContext } from './paper-context.ts';
import { blocksHtml, inlinesHtml, type ProsePlace } from './prose-html.ts';
import { needsText, readingHtml } from './reading-html.ts';

type Parts = {
  readonly [Kind in Section['kind']]: (section: Extract<Section, { kind: Kind }>, place: ProsePlace) => Child;
};

const parts: Parts = {
  check: ({ readings, outcomes }, place) => [
    element(
      'div',
      { class: 'readings' },
      readings.map((id) => readingHtml(id, place)),
    ),
    element(
      'ul',
      { class: 'outcomes' },
      outcomes.map(({ written, target, remark }) =>
        element(
          'li',
          {},
          tick(),
          ' ',
          element('span', { class: 'condition' }, written.replaceAll('`', '')),
          ' → ',
          goTo(target, place),
          remark.length > 0 && [', ', inlinesHtml(remark, place)],
        ),
      ),
    ),
  ],
  task: ({ task, minutes, wait, sets, onlyIf, target }, place) => [
    onlyIfHtml(needsText(onlyIf)),
    element('p', { class: 'task' }, tick(), ' ', element('b', {}, 'Do: '), inlinesHtml(task, place)),
    element(
      'p',
      { class: 'next' },
      [
        `${minutes} min${wait > 0 ? ` and ${wait} min of waiting` : ''}`,
        ...Object.entries(sets).map(([condition, value]) => `now ${condition} ${value}`),
      ].join(' · '),
      ' → ',
      goTo(target, place),
    ),
  ],
  call: ({ procedureTitle, given, first, ends }, place) => [
    element(
      'p',
      { class: 'task' },
      tick(),
      ' Follow ',
      element('b', {}, procedureTitle),
      given.length > 0 && ` with ${given.map(({ name, value }) => `${name} = ${value}`).join(', ')}`,
      ' → ',
      goTo(first, place),
    ),
    element(
      'ul',
      { class: 'outcomes' },
      ends.map(({ end, target, remark }) =>
        element(
          'li',
          {},
          tick(),
          ' it ends with ',
          element('span', { class: 'condition' }, end),
          ' → ',
          goTo(target, place),
          remark.length > 0 && [', ', inlinesHtml(remark, place)],
        ),
      ),
    ),
  ],
  fault: ({ remedies, onlyIf, proof, proofTries }, place) => [
    onlyIfHtml(needsText(onlyIf)),
    remedies.map((remedy) => remedyHtml(remedy, place)),
    element(
      'div',
      { class: 'proving' },
      proof.length > 0 && [
        element('h3', {}, 'Proof'),
        element('p', {}, 'Take these again, and whatever was wrong before. All must be as they should.'),
        proofTable(proof, proofTries, place),
      ],
      element(
        'p',
        { class: 'next' },
        tick(),
        ' All as they should: the board is mended. ',
        tick(),
        notAll(remedies),
      ),
    ),
  ],
  stop: ({ reason }, place) =>
    element('p', { class: 'task' }, tick(), ' ', element('b', {}, 'Stop: '), inlinesHtml(reason, place)),
  'hand-over': () => null,
};

const onlyIfHtml = (text: string): Child =>
  text !== '' && element('p', { class: 'only-if' }, tick(), ` ${text}.`);

function remedyHtml({ fault: id, hazards, blocks }: Remedy, place: ProsePlace): Element {
  const fault = place.tree.faults.find((each) => each.id === id);
  return element(
    'div',
    { class: 'remedy' },
    element('h3', {}, tick(), ' Remedy: ', fault?.is ?? id),
    hazardsHtml(hazards, place),
    fault !== undefined && element('p', { class: 'how' }, faultText(fault)),
    fault?.brings !== undefined && element('p', {}, `${broughtText(fault, place.tree.faults)}.`),
    blocksHtml(blocks, place),
    element(
      'p',
      { class: 'note' },
      fault?.which ? `${fault.which} ` : 'Where, and parts fitted ',
      blank('long'),
    ),
  );
}

const faultText = ({ tools, parts: wanted, minutes, onlyIf }: Fault): string =>
  [
    tools.length > 0 ? `With: ${tools.join(', ')}` : '',
    wanted.length > 0 ? `Parts: ${wanted.join(', ')}` : '',
    needsText(onlyIf),
    minutes === null ? '' : `${minutes} min`,
  ]
    .filter((part) => part !== '')
    .join(' · ');

const notAll = (remedies: readonly Remedy[]): string =>
  ` Not all: ${remedies.length > 1 ? 'the next remedy; after the last, ' : ''}go back to the first section that reads what is still wrong.`;

const proofTable = (
  proof: readonly string[],
  tries: Readonly<Record<string, number>>,
  context: PaperContext,
): Element =>
  element(
    'table',
    { class: 'proof' },
    element(
      'thead',
      {},
      element(
        'tr',
        {},
        ['', 'Reading', 'Should show', 'Shows'].map((head) => element('th', {}, head)),
      ),
    ),
    element(
      'tbody',
      {},
      proof.map((id) => proofRow(id, tries[id], context)),
    ),
  );

function proofRow(id: string, tries: number | undefined, { readings, usual }: PaperContext): Child {
  const reading = readings.get(id);
  if (reading === undefined) return null;
  return element(
    'tr',
    {},
    element('td', {}, tick()),
    element('td', {}, element('code', {}, id), ' ', reading.is),
    element('td', {}, tries === undefined ? expectedText(reading, usual) : `${tries} of ${tries}`),
    element('td', { class: 'space' }, answerSpace(reading, 'names only')),
  );
}

/** A numbered section. What leads here stands beside its title, for going back on paper. */
export function sectionHtml(section: Section, context: PaperContext, from: readonly string[]): Child {
  const number = context.numbers.get(section.id);
  if (number === undefined) return null;
  const place: ProsePlace = { ...context, within: section.id };
  return element(
    'section',
    { id: anchorOf(number), class: section.kind },
    element(
      'h2',
      {},
      element('span', { class: 'number' }, number),
      ' ',
      section.title,
      from.length > 0 && element('span', { class: 'from' }, ` from ${from.join(', ')}`),
    ),
    hazardsHtml(section.hazards, place),
    blocksHtml(section.blocks, place),
    parts[section.kind](section as never, place),
  );
}
