import type { Reading } from './reading.ts';

/** A reading that says nothing of how it is taken: what stands for one, or is made from another, says only what differs. */
export const bareReading: Omit<Reading, 'id' | 'is' | 'measure' | 'normal'> = {
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
  minutes: 0,
  wait: 0,
  source: null,
};
