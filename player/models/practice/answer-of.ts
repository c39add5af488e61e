import type { Observation } from '../../../engine/model/observation.ts';
import type { Reading } from '../../../engine/model/reading.ts';
import type { Drill } from '../../../engine/practice/drill.ts';
import type { Session } from '../../../engine/run/index.ts';
import { observe } from '../../../engine/scale/index.ts';

/** What a check showed last. */
export interface DrillAnswer {
  readonly reading: Reading;
  /** As the instrument shows it. */
  readonly typed: string;
  /** What a known-good board shows; null where nobody asked. */
  readonly twin: string | null;
  /** Null where it is only looked at and says nothing. */
  readonly observation: Observation | null;
  /** Bench minutes when it was taken. */
  readonly minutes: number;
  /** Damage that was done on the way. */
  readonly harm: readonly string[];
}

/** The last answer that the board gave in a reading; null before the first. */
export function answerOf(drill: Drill, session: Session, id: string): DrillAnswer | null {
  const reading = session.loaded.readings.get(id);
  const last = drill.events.findLast((event) => event.kind === 'measured' && event.reading === id);
  if (reading === undefined || last?.kind !== 'measured') return null;
  const twin = drill.events.findLast((event) => event.kind === 'twin' && event.reading === id);
  const seen = observe(reading, session, last.typed, drill.equipment);
  return {
    reading,
    typed: last.typed,
    twin: twin?.kind === 'twin' ? twin.typed : null,
    observation: seen.ok ? seen.value : null,
    minutes: last.minute,
    harm: last.passed.flatMap(({ harm, text }) => (harm ? [text] : [])),
  };
}

/** Every reading that was taken, the latest first, each with its last answer. */
export function answersOf(drill: Drill, session: Session): readonly DrillAnswer[] {
  const taken = drill.events.flatMap((event) => (event.kind === 'measured' ? [event.reading] : []));
  return [...new Set(taken.toReversed())].flatMap((id) => answerOf(drill, session, id) ?? []);
}
