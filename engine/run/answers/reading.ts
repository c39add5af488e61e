import type { BoardState, Happening } from '../../model/entry.ts';
import type { Observation, Understood } from '../../model/observation.ts';
import type { Reading } from '../../model/reading.ts';
import type { Taken } from '../../model/refusal.ts';
import { observe } from '../../scale/index.ts';
import { changesFor } from '../changes-for.ts';
import { isComputed } from '../is-computed.ts';
import { lackingFor } from '../lacking-for.ts';
import type { Question, ReadingQuestion } from '../question.ts';
import { readingAsked } from '../reading-asked.ts';
import type { Session } from '../session.ts';
import { type Answering, happened, refused } from './answering.ts';
import { arrangeOffer, arrangeText, heldText } from './held-words.ts';

export const value: Answering<'value'> = (session, { reading: id, typed, board }, question) => {
  if (question.ask === 'held') return seenFirst(session, question, id, typed, board);
  const asked = askedReading(session, id, question);
  return asked.ok ? observed(session, asked.value, typed, board) : asked;
};

function observed(
  session: Session,
  question: ReadingQuestion,
  typed: string,
  board: BoardState,
): Taken<Happening> {
  const { section, reading, tries } = question;
  const seen = observe(reading, session, typed, session.equipment);
  if (!seen.ok) return seen;
  if (tries !== null && isTooFew(seen.value.understood, tries)) {
    return refused(`The proof asks for ${tries} tries in a row`, [`${tries} of ${tries}`]);
  }
  if (!isBeyond(seen.value)) {
    return happened({ kind: 'read', section: section.id, observation: seen.value, board });
  }
  if (question.purpose === 'proof') return refused(proofNeedsAll);
  return happened({
    kind: 'unread',
    section: section.id,
    reading: reading.id,
    why: `the instrument showed "${typed.trim()}"`,
  });
}

/** Beyond the range, and so in no band more than in another. */
const isBeyond = ({ understood, bands }: Pick<Observation, 'understood' | 'bands'>): boolean =>
  understood.kind === 'overload' && bands.length > 1;

/** One failure is enough to know; only where all went well must there be as many tries as the proof asks for. */
const isTooFew = (understood: Understood, tries: number): boolean =>
  understood.kind === 'tries' && understood.good === understood.of && understood.of < tries;

/** What must be seen before something else may be done is given right there. */
function seenFirst(
  session: Session,
  { section, lacking }: Extract<Question, { readonly ask: 'held' }>,
  id: string | null,
  typed: string,
  board: BoardState,
): Taken<Happening> {
  const open = lacking
    .flatMap(({ take }) => take)
    .filter(({ onlyIf }) => lackingFor(session, onlyIf).length === 0);
  const reading = id === null ? open[0] : open.find((one) => one.id === id);
  if (reading === undefined) {
    return refused(
      heldText(lacking),
      open.map((one) => one.id),
    );
  }
  const changes = changesFor(session, reading);
  if (changes.length > 0) return refused(arrangeText(reading, changes), [arrangeOffer(changes)]);
  const seen = observe(reading, session, typed, session.equipment);
  if (!seen.ok) return seen;
  return isBeyond(seen.value)
    ? refused(`"${typed.trim()}" lies beyond the range of the instrument and tells nothing`)
    : happened({ kind: 'read', section: section.id, observation: seen.value, board });
}

/** Readings of the present section may be given in any order. */
function askedReading(session: Session, id: string | null, question: Question): Taken<ReadingQuestion> {
  if (question.ask === 'acknowledgement') return refused('Read the warning first and acknowledge it');
  const first = question.ask === 'reading' || question.ask === 'arrange' ? question : null;
  if (first === null) return refused('No reading is asked for now');
  const { reading: wanted, section } = first;
  const asked = readingAsked(session, id ?? wanted.id);
  if (asked !== null) return readyNow(session, asked);
  const found: Reading | undefined = session.loaded.readings.get(id ?? wanted.id);
  if (found === undefined) return refused(`This tree has no reading "${id}"`, [wanted.id]);
  if (isComputed(found)) {
    return refused(`"${id}" follows from other readings, so there is nothing to type for it`, [wanted.id]);
  }
  return refused(`"${section.title}" does not ask for "${id}": to change an older reading, retake it`, [
    wanted.id,
  ]);
}

/** A reading that is held back, or wants the board in another condition, is not taken out of turn either. */
function readyNow(session: Session, asked: ReadingQuestion): Taken<ReadingQuestion> {
  const { reading } = asked;
  const lacking = session.position.overridden.has(reading.id) ? [] : lackingFor(session, reading.onlyIf);
  if (lacking.length > 0) return refused(heldText(lacking));
  const changes = changesFor(session, reading);
  return changes.length > 0
    ? refused(arrangeText(reading, changes), [arrangeOffer(changes)])
    : { ok: true, value: asked };
}

/** The reading that stands at the present step, whether it can be taken at once or not. */
const waitingFor = (session: Session, { ask }: Question): ReadingQuestion | null =>
  ask === 'reading' || ask === 'arrange' || ask === 'held' ? readingAsked(session) : null;

export const confirm: Answering<'confirm'> = (session, _answer, question) => {
  if (question.ask === 'held') return refused(heldText(question.lacking));
  const asked = waitingFor(session, question);
  if (asked === null) return refused('No reading is asked for now');
  const { section, reading, known, tries } = asked;
  if (known === null || known.bands.length === 0) {
    return refused(`"${reading.id}" has not been read yet, so there is nothing to confirm`);
  }
  if (tries !== null && known.observation !== null && isTooFew(known.observation.understood, tries)) {
    return refused(`The proof asks for ${tries} tries in a row`, [`${tries} of ${tries}`]);
  }
  return happened({ kind: 'confirmed', section: section.id, reading: reading.id, of: known.entry });
};

const proofNeedsAll =
  'A proof needs every reading. Leave the job open and take it later, or close it as not mended';

export const cannotRead: Answering<'cannot-read'> = (session, { why }, question) => {
  const asked = waitingFor(session, question);
  if (asked === null) return refused('No reading is asked for now');
  if (asked.purpose === 'proof') return refused(proofNeedsAll);
  const { section, reading, lacks } = asked;
  const reason = why === '' && lacks !== null ? `no ${lacks}` : why;
  return happened({ kind: 'unread', section: section.id, reading: reading.id, why: reason });
};

export const retake: Answering<'retake'> = (session, { of, typed, manner, board }) => {
  const base = baseOf(session, of);
  const reading = session.loaded.readings.get(base?.reading ?? '');
  if (base === null || reading === undefined) return refused(`Entry ${of + 1} is not a reading`);
  const seen = observe(reading, session, typed, session.equipment);
  if (!seen.ok) return seen;
  return happened({ kind: 'retaken', of: base.entry, manner, observation: seen.value, board });
};

/** The entry that took a reading at its place in the walk. */
function baseOf(session: Session, of: number): { entry: number; reading: string } | null {
  const entry = session.effective[of];
  if (entry?.kind === 'read') return { entry: of, reading: entry.observation.reading };
  if (entry?.kind === 'confirmed' || entry?.kind === 'unread') return { entry: of, reading: entry.reading };
  return entry?.kind === 'retaken' && entry.of < of ? baseOf(session, entry.of) : null;
}

export const strike: Answering<'strike'> = (session, { of, why }) =>
  [...session.history.values()].some((words) => words.some(({ entry }) => entry === of))
    ? happened({ kind: 'struck', of, why })
    : refused(`Entry ${of + 1} is not a reading that counts`);

export const assume: Answering<'assume'> = (_session, { target }, question) => {
  if (question.ask !== 'too-close') return refused('The readings leave nothing open');
  const way = question.ways.find((open) => open.target === target);
  return way === undefined
    ? refused(
        `The readings do not lead to "${target}"`,
        question.ways.map((open) => open.target),
      )
    : happened({ kind: 'assumed', section: question.section.id, bands: way.bands });
};
