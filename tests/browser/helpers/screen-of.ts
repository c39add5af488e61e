import { type ConditionChange, type Question, questionOf, type Session } from '../../../engine/run/index.ts';
import { conditionName } from '../../../player/models/condition-name.ts';
import { minutesText } from '../../../player/models/minutes-text.ts';
import { takenHere } from '../../../player/models/taken-here.ts';

/** What must stand on the screen: the heading, what the answer is about, and the name of the main action. */
export interface Screen {
  readonly heading: string;
  /** Name of the reading or setting in the desk; null where there is no field. */
  readonly asked: string | null;
  readonly main: string;
}

const screens: {
  readonly [Ask in Question['ask']]: (question: Extract<Question, { ask: Ask }>, session: Session) => Screen;
} = {
  opening: () => ({ heading: 'This job was never opened', asked: null, main: '' }),
  setting: ({ setting }) => ({ heading: 'How is this board set?', asked: setting.is, main: 'Enter' }),
  symptom: () => ({ heading: 'Does the board show this?', asked: null, main: 'Yes, it does this' }),
  acknowledgement: ({ section }) => ({
    heading: section?.title ?? 'Before you begin',
    asked: null,
    main: 'I have read this',
  }),
  reading: ({ section, reading, purpose }) => ({
    heading: purpose === 'proof' ? `Prove: ${section.title}` : section.title,
    asked: reading.is,
    main: 'Enter',
  }),
  arrange: ({ section, changes }) => ({
    heading: section.title,
    asked: null,
    main: arrangeMain(changes),
  }),
  held: ({ section, lacking }, session) => {
    const { take, changes } = takenHere(session, lacking);
    if (take === null) return { heading: section.title, asked: null, main: 'Choose where to go on' };
    if (changes.length > 0) return { heading: section.title, asked: null, main: arrangeMain(changes) };
    return { heading: section.title, asked: take.is, main: 'Enter' };
  },
  call: ({ section }) => ({ heading: section.title, asked: null, main: 'Begin the procedure' }),
  'hand-over': ({ section }) => ({ heading: section.title, asked: null, main: 'Go on there' }),
  'too-close': () => ({ heading: 'Too close to call', asked: null, main: 'Measure again' }),
  task: ({ section, waitingSince }) => ({
    heading: section.title,
    asked: null,
    main:
      section.wait > 0 && waitingSince === null
        ? `Done: start the wait of ${minutesText(section.wait)}`
        : 'Done',
  }),
  remedy: ({ section }) => ({ heading: section.title, asked: null, main: 'It is done: prove it' }),
  aside: ({ section }) => ({ heading: section.title, asked: null, main: 'Choose where to go on' }),
  stop: ({ section }) => ({ heading: section.title, asked: null, main: 'Close the job' }),
  closing: () => ({ heading: 'Mended, and proven', asked: null, main: 'Close it as mended' }),
  nothing: ({ mended }) => ({
    heading: mended ? 'Mended, proven and closed' : 'Closed, not mended',
    asked: null,
    main: 'Show the record',
  }),
};

const arrangeMain = (changes: readonly ConditionChange[]): string =>
  `It is so: ${changes.map(({ condition, wanted }) => `${conditionName(condition)} ${wanted}`).join(', ')}`;

/** The screen that a session stands at. */
export function screenOf(session: Session): Screen {
  const question = questionOf(session);
  return (screens[question.ask] as (question: Question, session: Session) => Screen)(question, session);
}
