import type { Reading } from '../model/reading.ts';

const known = new WeakMap<Reading, Reading>();

/** One of many alike as a reading of its own; any other reading is itself. */
export function memberReading(reading: Reading): Reading {
  const { measure } = reading;
  if (measure.kind !== 'each') return reading;
  const before = known.get(reading);
  if (before) return before;
  const member: Reading = { ...reading, measure: measure.of, normal: measure.normal };
  known.set(reading, member);
  return member;
}
