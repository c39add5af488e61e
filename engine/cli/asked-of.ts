import { settlerWords } from '../doubt/index.ts';
import { inlineText } from '../prose/plain-text.ts';
import { expectationOf, type Known, type Question, type Session, valueText } from '../run/index.ts';
import { observationText } from '../scale/index.ts';

type Asked = {
  readonly [Ask in Question['ask']]: (
    question: Extract<Question, { readonly ask: Ask }>,
    session: Session,
  ) => object;
};

/** The last word on a reading, as it is offered for confirmation. */
const knownOf = (known: Known | null) =>
  known && {
    value: known.observation === null ? null : observationText(known.observation),
    bands: known.bands,
    stale: known.stale,
  };

const asked: Asked = {
  opening: () => ({}),
  setting: ({ setting }) => ({ setting: setting.id, is: setting.is }),
  symptom: ({ given }) => ({ given }),
  acknowledgement: ({ hazards }) => ({ hazards: hazards.map(({ word }) => word) }),
  reading: ({ reading, purpose, place, known, lacks, twinWanted, tries }, session) => {
    const { text, because, normal } = expectationOf(session, reading);
    const expected = { expected: text, because, normal };
    return {
      reading: reading.id,
      is: reading.is,
      purpose,
      place,
      ...expected,
      known: knownOf(known),
      lacks,
      twinWanted,
      tries,
    };
  },
  arrange: ({ reading, changes, known }) => ({
    reading: reading.id,
    is: reading.is,
    changes,
    known: knownOf(known),
  }),
  held: ({ reading, lacking }) => ({
    reading: reading?.id ?? null,
    is: reading?.is ?? null,
    lacking: lacking.map(({ need, reading: needed, known, take }) => ({
      reading: needed.id,
      is: needed.is,
      bands: need.bands,
      known: knownOf(known),
      take: take.map(({ id }) => id),
    })),
  }),
  'too-close': ({ ways, unsettled }) => ({
    ways,
    unsettled: unsettled.map(({ reading, bands, by }) => ({
      reading: reading.id,
      is: reading.is,
      bands,
      by: by.map(settlerWords),
    })),
  }),
  task: ({ section, waitingSince }, session) => ({
    task: inlineText(section.task, (formula) => valueText(session, formula)),
    minutes: section.minutes,
    wait: section.wait,
    waitingSince,
    sets: section.sets,
  }),
  call: ({ section }) => ({
    procedure: section.procedure,
    title: section.procedureTitle,
    given: section.given,
  }),
  'hand-over': ({ section, tree }) => ({ tree: section.tree, title: section.title, atHand: tree !== null }),
  remedy: ({ fault }) => ({ fault: fault.id, is: fault.is, which: fault.which }),
  aside: () => ({}),
  stop: ({ section }, session) => ({
    reason: inlineText(section.reason, (formula) => valueText(session, formula)),
  }),
  closing: () => ({}),
  nothing: ({ mended }) => ({ mended }),
};

/** What is asked, as plain data: the keys of each kind stand beside `ask`. */
export const askedOf = (session: Session, question: Question): { readonly ask: Question['ask'] } => ({
  ask: question.ask,
  ...asked[question.ask](question as never, session),
});
