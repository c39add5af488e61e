import type { CompiledTree } from '../../model/compiled-tree.ts';
import type { Hazard } from '../../model/prose.ts';
import type { HandOverSection, Section } from '../../model/section.ts';
import { inlineText, plainText, wrap } from '../../prose/plain-text.ts';
import {
  findings,
  hazardsHere,
  nameHere,
  type Question,
  questionOf,
  type Session,
  valueText,
} from '../../run/index.ts';
import { broughtText } from '../../suspects/brought-text.ts';
import { arrangeLines } from './arrange-lines.ts';
import { detourLine } from './detour-line.ts';
import { heldLines } from './held-lines.ts';
import { readingLines } from './reading-lines.ts';
import { settingLines } from './setting-lines.ts';
import { unfitLine } from './suspects-block.ts';
import { tooCloseLines } from './too-close-lines.ts';

/** What a technician at a terminal reads now: section, hazards, what to do, what is asked. */
export function showQuestion(session: Session, width: number, brief = false): string {
  const question = questionOf(session);
  const show = { session, width, brief };
  return [
    outsideSections.includes(question.ask) ? '' : unfitLine(session, width),
    ...sectionLines(show, question),
    brief ? '' : findingLines(session, width),
    ...asking(show, question),
  ]
    .filter((part) => part !== '')
    .join('\n\n');
}

/** What the readings say together. */
const findingLines = (session: Session, width: number): string =>
  findings(session)
    .map(({ text }) => wrap(`Together: ${text}`, width))
    .join('\n');

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
  const detour = detourLine(show.session, show.width);
  if (show.brief) return [heading, detour];
  const mild = hazardsHere(show.session).filter(({ word }) => word === 'caution' || word === 'notice');
  return [heading, detour, ...mild.map((hazard) => hazardText(show, hazard)), prose(show, section.blocks)];
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
  setting: ({ session, width }, { setting }) => settingLines(session, setting, width),
  symptom: ({ session, width }, { given }) => [
    wrap(session.loaded.tree.symptom, width),
    ...given.map(({ reading, band }) => `  ${nameHere(session, reading)}: ${band}`),
    'Does the board show this? yes or no',
  ],
  acknowledgement: (show, { hazards }) => [
    ...hazards.map((hazard) => hazardText(show, hazard)),
    'acknowledge, to go on',
  ],
  reading: ({ session, width }, question) => [readingLines(session, question, width)],
  arrange: ({ session }, question) => arrangeLines(session, question),
  held: ({ session }, question) => heldLines(session, question),
  'too-close': ({ session, width }, question) => tooCloseLines(session, question, width),
  task: ({ session, width }, { section, waitingSince }) => [
    wrap(`Do: ${inlineText(section.task, (formula) => valueText(session, formula))}`, width),
    section.wait > 0 && waitingSince === null
      ? `wait, to start ${section.wait} ${section.wait === 1 ? 'minute' : 'minutes'}; done, when it is done`
      : 'done, when it is done',
  ],
  call: ({ session }, { section }) => [
    [
      `Follow "${section.procedureTitle}"${section.given.length === 0 ? '' : ', with'}`,
      ...section.given.map(({ is, value }) => `  ${is}: ${givenText(session, value)}`),
    ].join('\n'),
    'done, to begin with it',
  ],
  'hand-over': ({ width }, { section, tree }) => [
    wrap(handOverText(section, tree), width),
    tree === null ? 'back, go SECTION, or close not mended: why' : 'hand over, to go on with it',
  ],
  remedy: (show, { fault, remedy }) => [
    `Fault: ${fault.is}`,
    wrap(broughtText(fault, show.session.loaded.faults.values()), show.width),
    prose(show, remedy.blocks),
    fault.which === null ? '' : `Note ${fault.which} it was`,
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

/** A reading that is given to a procedure by its own words, with its name behind. */
function givenText(session: Session, value: string): string {
  return session.loaded.readings.has(value) ? `${nameHere(session, value)} (${value})` : value;
}

const handOverText = (section: HandOverSection, tree: CompiledTree | null): string =>
  tree === null
    ? `This job goes on with the tree "${section.tree}", which is not at hand. Take it up again with that file: deadboard walk ${section.tree}.md --job FILE`
    : `This job goes on with "${tree.title}". What was read stays known.`;
