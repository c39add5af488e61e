import type { Reading } from '../../engine/model/reading.ts';

/** A reading that says nothing beyond its measure and its normal bands; spread it to say more. */
export const plainReading = (
  id: string,
  measure: Reading['measure'],
  normal: Reading['normal'],
): Reading => ({
  id,
  is: id,
  measure,
  normal,
  call: false,
  from: null,
  like: null,
  when: {},
  onlyIf: [],
  usual: null,
  needs: [],
  hidden: null,
  after: [],
  power: null,
  with: [],
  set: null,
  points: [],
  minutes: 1,
  wait: 0,
  source: null,
});
