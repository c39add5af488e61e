import type { Reading } from '../../engine/model/reading.ts';
import {
  expectationOf,
  type Known,
  latest,
  readingHere,
  type Session,
  standing,
  wordsOn,
} from '../../engine/run/index.ts';
import { observationText } from '../../engine/scale/index.ts';
import { bandsInWords, bandWords } from './band-words.ts';
import { doubtWords } from './doubt-words.ts';

/** One line of "what has been read". */
export interface ReadingRow {
  readonly reading: string;
  readonly is: string;
  /** As understood: `25.2 MHz`; the band where it belongs to the symptom; null where it could not be read. */
  readonly value: string | null;
  readonly bands: readonly string[];
  readonly verdict: 'normal' | 'wrong' | 'open';
  readonly judged: boolean;
  /** What it should be, empty where nothing is judged. */
  readonly expected: string;
  /** Entry to retake; null for what belongs to the symptom. */
  readonly of: number | null;
  /** How many times it has been looked at. */
  readonly looks: number;
  readonly stale: boolean;
  readonly given: boolean;
  /** It follows from other readings, or from a procedure, and cannot be retaken. */
  readonly from: 'readings' | 'procedure' | null;
  /** `± 44 mV with the bench meter` */
  readonly doubt: string | null;
}

/** What has been read so far, latest word on each reading, the newest first. */
export function readingRows(session: Session): readonly ReadingRow[] {
  return [...session.history.keys()]
    .flatMap((id) => {
      const known = latest(session, id);
      return known === null ? [] : [{ id, known }];
    })
    .sort((a, b) => b.known.entry - a.known.entry)
    .flatMap(({ id, known }) => rowOf(session, id, known));
}

function rowOf(session: Session, id: string, known: Known): readonly ReadingRow[] {
  const reading = readingHere(session, id);
  if (reading === undefined) return [];
  const words = wordsOn(session, id);
  return [
    {
      reading: id,
      is: reading.is,
      value: wordsOf(reading, known),
      bands: bandsInWords(reading, known.bands),
      verdict: standing(session, id, known),
      judged: reading.normal !== 'any',
      expected: expectationOf(session, reading).text,
      of: known.given || isComputed(reading) ? null : known.entry,
      looks: words.length,
      stale: known.stale,
      given: known.given,
      from: reading.call ? 'procedure' : reading.from === null ? null : 'readings',
      doubt: known.observation === null ? null : doubtWords(known.observation),
    },
  ];
}

function wordsOf(reading: Reading, { observation, bands }: Known): string | null {
  if (observation !== null) return observationText(observation);
  return bands.length > 0 ? bandWords(reading, bands) : null;
}

const isComputed = ({ from, call }: Reading): boolean => call || from !== null;
