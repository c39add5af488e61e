import type { Observation } from '../../engine/model/observation.ts';
import type { Reading } from '../../engine/model/reading.ts';
import { preview, type Session, standing } from '../../engine/run/index.ts';
import { observationText } from '../../engine/scale/index.ts';
import type { Understanding } from '../parts/understanding-line.tsx';

const hints: Record<Reading['measure']['kind'], string> = {
  quantity: 'Type what the instrument shows: 4.98, 25,2M, 4k7, OL, 48..52, > 200k',
  options: 'Type the first letters, or press its number',
  codes: 'Type the code as it is shown',
};

/** How a text is understood, and the observation it makes; null while it makes none. */
interface Understood {
  readonly understanding: Understanding;
  readonly observation: Observation | null;
}

/** How the text in the field is understood for the reading that is asked, and where it leads. */
export function understandingOf(session: Session, reading: Reading, typed: string): Understood {
  if (typed.trim() === '') {
    return { understanding: { state: 'empty', hint: hints[reading.measure.kind] }, observation: null };
  }
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

/** The part of an understanding that the observation alone gives. */
export function observedWords(session: Session, reading: Reading, observation: Observation) {
  const verdict = standing(session, reading.id, observation);
  return {
    value: observationText(observation),
    bands: observation.bands,
    normal: reading.normal === 'any' || verdict === 'open' ? null : verdict === 'normal',
    remarks: observation.remarks,
  };
}

/** `0.63`, `1.02`, `12`: two digits that count. */
export function shareText(share: number): string {
  if (!Number.isFinite(share)) return String(share);
  const size = Math.abs(share);
  if (size >= 10) return share.toFixed(0);
  return size >= 0.1 || size === 0 ? share.toFixed(2) : share.toPrecision(2);
}
