import type { Reading } from '../model/reading.ts';
import { bandsOf } from '../scale/index.ts';
import type { Subject } from './is-band.ts';

/** A reading as what a clause speaks of. */
export const subjectOf = (reading: Reading): Subject => ({
  name: reading.id,
  bands: bandsOf(reading),
  each: reading.measure.kind === 'each' ? reading.measure : null,
});
