import { settlers } from '../../engine/doubt/index.ts';
import type { Observation } from '../../engine/model/observation.ts';
import type { Reading } from '../../engine/model/reading.ts';
import { preview, type Session, standing } from '../../engine/run/index.ts';
import { memberReading, observationText, observe, resolveScale } from '../../engine/scale/index.ts';
import type { Understanding } from '../parts/understanding-line.tsx';
import { bandsInWords } from './band-words.ts';
import { doubtWords } from './doubt-words.ts';
import { settleWords } from './settle-words.ts';

const hints: Record<Exclude<Reading['measure']['kind'], 'each'>, string> = {
  quantity: 'Type what the instrument shows: 4.98, 25,2M, 4k7, OL, 48..52, > 200k',
  options: 'Type the first letters, or press its number',
  codes: 'Type the code as it is shown',
  beeps: 'Type what you hear: long short short, 1 long 2 short, 1-3-3, or none',
  tries: 'Count with the buttons, or type how many of how many: 3 of 10',
};

/** How a text is understood, and the observation it makes; null while it makes none. */
export interface Understood {
  readonly understanding: Understanding;
  readonly observation: Observation | null;
}

/** How the text in the field is understood for the reading that is asked, and where it leads. */
export function understandingOf(session: Session, reading: Reading, typed: string): Understood {
  if (typed.trim() === '') return nothingTyped(reading);
  const seen = preview(session, typed);
  if (!seen.ok) return { understanding: { state: 'refused', ...seen.refusal }, observation: null };
  const { observation, fraction, target, ways } = seen.value;
  const targets = target === null ? ways.map((way) => way.target) : [target];
  const understanding: Understanding = {
    state: 'understood',
    ...observedWords(session, reading, observation),
    fraction: fraction === null ? null : `${shareText(fraction)} of what it should be`,
    leads: targets.map((id) => session.loaded.sections.get(id)?.title ?? id),
  };
  return { understanding, observation };
}

/** The same for a reading that is taken here because another one waits for it. */
export function understandingOutOfTurn(session: Session, reading: Reading, typed: string): Understood {
  if (typed.trim() === '') return nothingTyped(reading);
  const seen = observe(reading, session, typed, session.equipment);
  if (!seen.ok) return { understanding: { state: 'refused', ...seen.refusal }, observation: null };
  const words = observedWords(session, reading, seen.value);
  return {
    understanding: { state: 'understood', ...words, fraction: null, leads: [] },
    observation: seen.value,
  };
}

const nothingTyped = ({ measure }: Reading): Understood => ({
  understanding: { state: 'empty', hint: hintOf(measure) },
  observation: null,
});

/** A row is explained with its own names. */
function hintOf(measure: Reading['measure']): string {
  if (measure.kind !== 'each') return hints[measure.kind];
  const [first = ''] = measure.members;
  const value = measure.of.kind === 'options' ? (measure.of.options.at(-1)?.name ?? '') : '…';
  return `Type them in any order: ${first} ${value}; rest ${measure.normal[0] ?? 'the same'}`;
}

/** The part of an understanding that the observation alone gives. */
export function observedWords(session: Session, reading: Reading, observation: Observation) {
  const verdict = standing(session, reading.id, observation);
  const by = settlers(reading, resolveScale(memberReading(reading), session), observation, session.equipment);
  const counted = reading.measure.kind === 'tries';
  const doubt = doubtWords(observation);
  return {
    value: observationText(observation),
    bands: bandsInWords(reading, observation.bands),
    normal: reading.normal === 'any' || verdict === 'open' ? null : verdict === 'normal',
    remarks: [...(counted ? [] : observation.remarks), ...(doubt === null ? [] : [doubt])],
    settle: counted ? (observation.remarks[0] ?? null) : settleWords(session, by),
  };
}

/** `0.63`, `1.02`, `12`: two digits that count. */
export function shareText(share: number): string {
  if (!Number.isFinite(share)) return String(share);
  const size = Math.abs(share);
  if (size >= 10) return share.toFixed(0);
  return size >= 0.1 || size === 0 ? share.toFixed(2) : share.toPrecision(2);
}
