import type { Hazard } from '../../model/prose.ts';
import type { Reading } from '../../model/reading.ts';
import type { Section } from '../../model/section.ts';
import { inlineText, plainText, wrap } from '../../prose/plain-text.ts';
import {
  expectationOf,
  hazardsHere,
  type Question,
  questionOf,
  type ReadingQuestion,
  type Session,
  valueText,
} from '../../run/index.ts';
import { observationText } from '../../scale/index.ts';

/** What a technician at a terminal reads now: section, hazards, what to do, what is asked. */
export function showQuestion(session: Session, width: number, brief = false): string {
  const question = questionOf(session);
  const show = { session, width, brief };
  return [...sectionLines(show, question), ...asking(show, question)]
    .filter((part) => part !== '')
    .join('\n\n');
}

interface Show {
  readonly session: Session;
  readonly width: number;
  /** The section's prose stands on the screen already. */
  readonly brief: boolean;
}

const prose = ({ session, width }: Show, blocks: Section['blocks']): string =>
  plainText(blocks, (formula) => valueText(session, formula), width);

const outsideSections: readonly Question['ask'][] = ['opening', 'setting', 'symptom', 'closing', 'nothing'];

function sectionLines(show: Show, question: Question): readonly string[] {
  const { section } = show.session.position;
  if (section === null || outsideSections.includes(question.ask)) return [];
  if (question.ask === 'acknowledgement' && question.section === null) return [];
  const heading = `== ${section.title} ==`;
  if (show.brief) return [heading];
  const mild = hazardsHere(show.session).filter(({ word }) => word === 'caution' || word === 'notice');
  return [heading, ...mild.map((hazard) => hazardText(show, hazard)), prose(show, section.blocks)];
}

const hazardText = (show: Show, { word, blocks }: Hazard): string =>
  wrap(`${word.toUpperCase()}: ${prose({ ...show, width: Number.POSITIVE_INFINITY }, blocks)}`, show.width);

type Asking = {
  readonly [Ask in Question['ask']]: (
    show: Show,
    question: Extract<Question, { ask: Ask }>,
  ) => readonly string[];
};

const asking = (show: Show, question: Question): readonly string[] =>
  askings[question.ask](show, question as never);

const askings: Asking = {
  opening: ({ session }) => [
    session.loaded.tree.title,
    'Which board is it? open: board; owner; what the owner says',
  ],
  setting: (_show, { setting }) => [
    setting.kind === 'options'
      ? `${setting.is}: ${setting.options.map(({ name }) => name).join(', ')}? (? if not known)`
      : `${setting.is}, in ${setting.unit}? (? if not known)`,
  ],
  symptom: ({ session, width }, { given }) => [
    wrap(session.loaded.tree.symptom, width),
    ...given.map(({ reading, band }) => `  ${session.loaded.readings.get(reading)?.is ?? reading}: ${band}`),
    'Does the board show this? yes or no',
  ],
  acknowledgement: (show, { hazards }) => [
    ...hazards.map((hazard) => hazardText(show, hazard)),
    'acknowledge, to go on',
  ],
  reading: (show, question) => readingLines(show, question),
  'too-close': ({ session }, { ways }) => [
    'The readings leave more than one way. Measure again (retake), or go on as if:',
    ...ways.map(
      ({ target, bands }) =>
        `  as if ${target}   (${Object.entries(bands)
          .filter(([name]) => session.position.taken.has(name))
          .map(([name, band]) => `${name} ${band}`)
          .join(', ')})`,
    ),
  ],
  task: ({ session, width }, { section, waitingSince }) => [
    wrap(
      inlineText(section.task, (formula) => valueText(session, formula)),
      width,
    ),
    section.wait > 0 && waitingSince === null
      ? `wait, to start ${section.wait} minutes; done, when it is done`
      : 'done, when it is done',
  ],
  remedy: (show, { fault, remedy }) => [
    `Fault: ${fault.is}`,
    prose(show, remedy.blocks),
    'remedied: which part or pin; part = cost     (or decline: why)',
  ],
  aside: (_show, { section }) => [
    `"${section.title}" is put aside: it was not the cause, or not the only one.`,
    'go SECTION to look elsewhere, back, or close not mended: why',
  ],
  stop: ({ session, width }, { section }) => [
    wrap(
      inlineText(section.reason, (formula) => valueText(session, formula)),
      width,
    ),
    'back, go SECTION, or close not mended: why',
  ],
  closing: () => ['The proof is complete: every reading is normal.', 'close, to end the job as mended'],
  nothing: (_show, { mended }) => [`This job is closed, ${mended ? 'mended' : 'not mended'}. reopen: why`],
};

function readingLines(
  { session }: Show,
  { reading, purpose, place, known }: ReadingQuestion,
): readonly string[] {
  const { text, because } = expectationOf(session, reading);
  const count = place.of > 1 ? ` (${place.at} of ${place.of})` : '';
  const reasons = because.map(({ is, value }) => `${is} is ${value ?? 'not known'}`).join(', ');
  const lines = [
    `${purpose === 'proof' ? 'Proof: ' : ''}${reading.is}${count}`,
    ...conditionLine(reading),
    text === '' ? '' : `  should be ${text}${reasons === '' ? '' : `, because ${reasons}`}`,
    ...choiceLines(reading),
    known?.observation
      ? `  last: ${observationText(known.observation)}, ${known.bands.join(' or ')} (same, if it still is)`
      : '',
  ];
  return [lines.filter((line) => line !== '').join('\n')];
}

function conditionLine(reading: Reading): readonly string[] {
  const parts = [
    reading.power === null ? '' : `power ${reading.power.toUpperCase()}`,
    reading.with.length === 0 ? '' : `with ${reading.with.join(', ')}`,
    reading.points.length === 0 ? '' : `at ${reading.points.join(' and ')}`,
    reading.set ?? '',
    reading.wait > 0 ? `after waiting ${reading.wait} minutes` : '',
  ].filter((part) => part !== '');
  return parts.length === 0 ? [] : [`  ${parts.join(' · ')}`];
}

function choiceLines({ measure }: Reading): readonly string[] {
  if (measure.kind !== 'options') return [];
  return measure.options.map(
    ({ name, means }, index) => `  ${index + 1} ${name}${means === null ? '' : `: ${means}`}`,
  );
}
