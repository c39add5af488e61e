import type { Reading } from '../model/reading.ts';
import { oneOfMany } from '../names/one-of-many.ts';
import { latest, type Session } from './session.ts';

/** A reading in this job's words: one of many alike is named, as far as it was found. */
export function readingHere(session: Session, id: string): Reading | undefined {
  const reading = session.loaded.readings.get(id);
  const { ones } = session.loaded;
  if (reading === undefined || ones.length === 0) return reading;
  const found = foundIn(session, id);
  if (found !== '') return { ...reading, is: `${reading.is} (${found})` };
  const named = ones.filter((one) => reading.is.includes(one) && foundIn(session, one) !== '');
  if (named.length === 0) return reading;
  const is = named.reduce(
    (text, one) => text.replaceAll(one, `${one}: ${foundIn(session, one)}`),
    reading.is,
  );
  return { ...reading, is };
}

/** What a reading is in this job's words; its id where the tree has no such reading. */
export const nameHere = (session: Session, id: string): string => readingHere(session, id)?.is ?? id;

/** The members that the latest word on all of them puts in the band: `A3, A5`; empty where it says nothing. */
function foundIn(session: Session, id: string): string {
  const one = oneOfMany(id);
  const understood = one && latest(session, one.group)?.observation?.understood;
  if (understood?.kind !== 'each') return '';
  return understood.members
    .filter(({ bands }) => bands.includes(one?.band ?? ''))
    .map(({ name }) => name)
    .join(', ');
}
