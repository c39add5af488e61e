import { pointsOf } from '../../board/index.ts';
import type { Measure, Reading } from '../../model/reading.ts';
import { expectationOf, type ReadingQuestion, type Session } from '../../run/index.ts';
import { bandsOf, beepText, observationText } from '../../scale/index.ts';
import { hanging } from './hanging.ts';

/** A reading that is asked: what it is, how it is taken, what it should be, and what was seen of it before. */
export function readingLines(session: Session, question: ReadingQuestion, width: number): string {
  const { reading, purpose, place, known, twinWanted, lacks, tries } = question;
  const { text } = expectationOf(session, reading);
  const count = place.of > 1 ? ` (${place.at} of ${place.of})` : '';
  const lines = [
    `${purpose === 'proof' ? 'Proof: ' : ''}${reading.is}${count}`,
    ...howLines(session, reading).map((line) => hanging(line, width)),
    lacks === null ? '' : `  this takes a ${lacks}, which is not here (cannot read)`,
    text === '' ? '' : hanging(shouldBe(session, reading), width),
    twinWanted ? `  a limit rests on a known-good board: twin ${reading.id} = its value` : '',
    tries === null ? '' : `  the proof asks for ${tries} of ${tries}`,
    ...choices[reading.measure.kind](reading.measure as never, reading),
    known?.observation
      ? `  last: ${observationText(known.observation)}, ${known.bands.join(' or ')} (same, if it still is)`
      : '',
  ];
  return lines.filter((line) => line !== '').join('\n');
}

/** `should be 39.6 MHz .. 40.4 MHz, because Bus clock is 40 MHz`; or what it depends on while that is not known. */
function shouldBe(session: Session, reading: Reading): string {
  const { text, because } = expectationOf(session, reading);
  if (because.some(({ value }) => value === null)) return `what it should be ${text}`;
  const reasons = because.map(({ is, value }) => `${is} is ${value}`).join(', ');
  return `should be ${text}${reasons === '' ? '' : `, because ${reasons}`}`;
}

function howLines({ board }: Session, reading: Reading): readonly string[] {
  const places = board === null ? [] : pointsOf(board, reading);
  const points = places.length > 0 ? places.map(({ is }) => is) : reading.points;
  const conditions = Object.entries(reading.when).map(
    ([condition, value]) => `${condition} ${value.toUpperCase()}`,
  );
  const parts = [
    reading.power === null ? '' : `power ${reading.power.toUpperCase()}`,
    ...conditions,
    reading.with.length === 0 ? '' : `with ${reading.with.join(', ')}`,
    points.length === 0 ? '' : `at ${points.join(' and ')}`,
    reading.set ?? '',
    reading.wait > 0 ? `after waiting ${reading.wait} ${reading.wait === 1 ? 'minute' : 'minutes'}` : '',
  ].filter((part) => part !== '');
  return parts.length === 0 ? [] : [parts.join(' · ')];
}

type Choices = {
  readonly [Kind in Measure['kind']]: (
    measure: Extract<Measure, { readonly kind: Kind }>,
    reading: Reading,
  ) => readonly string[];
};

const meaning = (means: string | null): string => (means === null ? '' : `: ${means}`);

/** What can be answered, where that is a closed list or has a form of its own. */
const choices: Choices = {
  quantity: () => [],
  options: ({ options }) =>
    options.map(({ name, means }, index) => `  ${index + 1} ${name}${meaning(means)}`),
  codes: () => [],
  beeps: ({ patterns }) =>
    patterns.map(({ pattern, band, means }) => `  ${beepText(pattern)}: ${means ?? band}`),
  tries: ({ enough }) => [`  how often it succeeded, as 3 of 10; ${enough} in a row settle it`],
  each: ({ members, of, normal }, reading) => [
    `  ${members.join(', ')}: each ${bandsOf({ ...reading, measure: of }).join(' or ')}`,
    `  all good, or ${members[0] ?? ''} ${bandsOf({ ...reading, measure: of }).find((band) => !normal.includes(band)) ?? ''}, rest good`,
  ],
};
