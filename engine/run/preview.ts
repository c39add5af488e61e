import type { Observation } from '../model/observation.ts';
import type { Taken } from '../model/refusal.ts';
import { fractionOfNominal, observe, resolveScale } from '../scale/index.ts';
import type { OpenWay } from './question.ts';
import { questionOf } from './question-of.ts';
import { resolveCheck } from './resolve-check.ts';
import type { Session } from './session.ts';

/** What a typed reading would mean, before it is entered. */
export interface Preview {
  readonly observation: Observation;
  /** 0.63 of what it should be; null where there is no such value. */
  readonly fraction: number | null;
  /** Where the check would lead; null in a proof, and while other readings of the check still decide. */
  readonly target: string | null;
  /** Where the readings leave more than one way. */
  readonly ways: readonly OpenWay[];
}

/** How `typed` is understood for the reading that is asked now. */
export function preview(session: Session, typed: string): Taken<Preview> {
  const question = questionOf(session);
  if (question.ask !== 'reading') {
    return { ok: false, refusal: { text: 'No reading is asked for now', offers: [] } };
  }
  const { reading, purpose, place } = question;
  const observed = observe(reading, session, typed, session.equipment);
  if (!observed.ok) return observed;
  const observation = observed.value;
  const scale = reading.measure.kind === 'quantity' ? resolveScale(reading, session) : null;
  const fraction = scale === null ? null : fractionOfNominal(observation, scale);
  if (purpose === 'proof') return { ok: true, value: { observation, fraction, target: null, ways: [] } };
  const way = resolveCheck(session, { [reading.id]: observation });
  const target = way.kind === 'one' ? way.target : null;
  const ways = way.kind === 'open' && place.at === place.of ? way.ways : [];
  return { ok: true, value: { observation, fraction, target, ways } };
}
