import type { Entry } from '../model/entry.ts';
import type { Observation } from '../model/observation.ts';
import type { Reading } from '../model/reading.ts';
import type { RecordReading, Verdict } from '../model/record.ts';
import { type Session, standing } from '../run/index.ts';
import { observationText } from '../scale/index.ts';
import { expectedThen } from './expected-then.ts';
import { recordDoubt, twinText } from './record-doubt.ts';
import { readingOfJob, titleOfJob } from './record-trees.ts';

/** Every reading of a job in the order it was taken, what does not count any more included. */
export function recordReadings(session: Session): readonly RecordReading[] {
  return session.entries.flatMap((entry, index) => {
    const look = lookOf(session, entry);
    const reading = look === null ? undefined : readingOfJob(session, look.reading);
    return look === null || reading === undefined ? [] : [rowOf(session, entry, index, look, reading)];
  });
}

interface Look {
  readonly section: string;
  readonly reading: string;
  readonly observation: Observation | null;
  readonly why: string;
}

function lookOf(session: Session, entry: Entry): Look | null {
  switch (entry.kind) {
    case 'read':
      return {
        section: entry.section,
        reading: entry.observation.reading,
        observation: entry.observation,
        why: '',
      };
    case 'retaken': {
      const base = session.entries[entry.of];
      const section = base !== undefined && 'section' in base ? (base.section ?? '') : '';
      return { section, reading: entry.observation.reading, observation: entry.observation, why: '' };
    }
    case 'confirmed': {
      const known = session.history.get(entry.reading)?.find((word) => session.entries[word.entry] === entry);
      return {
        section: entry.section,
        reading: entry.reading,
        observation: known?.observation ?? null,
        why: 'as before',
      };
    }
    case 'unread':
      return { section: entry.section, reading: entry.reading, observation: null, why: entry.why };
    default:
      return null;
  }
}

function rowOf(session: Session, entry: Entry, index: number, look: Look, reading: Reading): RecordReading {
  const { observation } = look;
  const known = session.history.get(reading.id)?.find((word) => word.entry === index) ?? null;
  const bands = known?.bands ?? observation?.bands ?? [];
  return {
    entry: index + 1,
    at: entry.at,
    section: titleOfJob(session, look.section),
    reading: reading.id,
    is: reading.is,
    typed: observation?.typed ?? '',
    value: observation === null ? look.why : observationText(observation),
    bands,
    verdict: standingOf(session, reading, bands),
    expected: expectedThen(session, reading, observation),
    mark: observation?.mark ?? null,
    doubt: recordDoubt(reading, observation),
    twin: twinText(session, reading.id, observation?.used?.twin ?? null),
    aside: asideOf(session, entry, index, reading.id),
  };
}

function standingOf(session: Session, reading: Reading, bands: readonly string[]): Verdict {
  if (bands.length === 0) return 'not read';
  if (reading.normal === 'any') return 'not judged';
  return standing(session, reading.id, { bands });
}

function asideOf(session: Session, entry: Entry, index: number, reading: string): string | null {
  if (entry.kind === 'unread') return null;
  const struck = session.entries.find((later) => later.kind === 'struck' && later.of === index);
  if (struck?.kind === 'struck') return `struck out: ${struck.why}`;
  const corrected = session.entries.findIndex(
    (later) => later.kind === 'retaken' && later.manner === 'correction' && later.of === index,
  );
  if (corrected >= 0) return `corrected by ${corrected + 1}`;
  const known = session.history.get(reading)?.find((word) => word.entry === index);
  return known?.stale ? 'the board was altered since' : null;
}
