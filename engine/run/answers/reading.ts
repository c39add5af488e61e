import type { BoardState, Happening } from '../../model/entry.ts';
import type { Reading } from '../../model/reading.ts';
import type { Taken } from '../../model/refusal.ts';
import { observe } from '../../scale/index.ts';
import type { Question, ReadingQuestion } from '../question.ts';
import { latest, type Session } from '../session.ts';
import { readingsOf } from '../take-reading.ts';
import { type Answering, happened, refused } from './answering.ts';

export const value: Answering<'value'> = (session, { reading: id, typed, board }, question) => {
  const asked = askedReading(session, id, question);
  return asked.ok ? observed(session, asked.value, typed, board) : asked;
};

function observed(
  session: Session,
  question: ReadingQuestion,
  typed: string,
  board: BoardState,
): Taken<Happening> {
  const { section, reading } = question;
  const seen = observe(reading, session, typed);
  if (!seen.ok) return seen;
  const { understood, bands } = seen.value;
  const beyond = understood.kind === 'overload' && bands.length > 1;
  if (!beyond) return happened({ kind: 'read', section: section.id, observation: seen.value, board });
  if (question.purpose === 'proof') return refused(proofNeedsAll);
  return happened({
    kind: 'unread',
    section: section.id,
    reading: reading.id,
    why: `the instrument showed "${typed.trim()}"`,
  });
}

/** Readings of the present section may be given in any order. */
function askedReading(session: Session, id: string | null, question: Question): Taken<ReadingQuestion> {
  if (question.ask === 'acknowledgement') return refused('Read the warning first and acknowledge it');
  if (question.ask !== 'reading') return refused('No reading is asked for now');
  if (id === null || id === question.reading.id) return { ok: true, value: question };
  const reading: Reading | undefined = session.loaded.readings.get(id);
  if (reading === undefined) return refused(`This tree has no reading "${id}"`, [question.reading.id]);
  if (readingsOf(session).includes(id)) return { ok: true, value: { ...question, reading } };
  return refused(
    `"${question.section.title}" does not ask for "${id}": to change an older reading, retake it`,
    [question.reading.id],
  );
}

export const confirm: Answering<'confirm'> = (session, _answer, question) => {
  if (question.ask !== 'reading') return refused('No reading is asked for now');
  const known = latest(session, question.reading.id);
  if (known === null || known.bands.length === 0) {
    return refused(`"${question.reading.id}" has not been read yet, so there is nothing to confirm`);
  }
  return happened({
    kind: 'confirmed',
    section: question.section.id,
    reading: question.reading.id,
    of: known.entry,
  });
};

const proofNeedsAll =
  'A proof needs every reading. Leave the job open and take it later, or close it as not mended';

export const cannotRead: Answering<'cannot-read'> = (_session, { why }, question) => {
  if (question.ask !== 'reading') return refused('No reading is asked for now');
  if (question.purpose === 'proof') return refused(proofNeedsAll);
  return happened({ kind: 'unread', section: question.section.id, reading: question.reading.id, why });
};

export const retake: Answering<'retake'> = (session, { of, typed, manner, board }) => {
  const base = baseOf(session, of);
  const reading = session.loaded.readings.get(base?.reading ?? '');
  if (base === null || reading === undefined) return refused(`Entry ${of + 1} is not a reading`);
  const seen = observe(reading, session, typed);
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
