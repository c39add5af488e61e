import { localIso } from '../../engine/job/local-iso.ts';
import type { Clock } from './clock.ts';

/** A clock that stands still until it is moved. */
export interface FakeClock extends Clock {
  forward(minutes: number): void;
}

export function fakeClock(start = '2031-04-05T18:30:00+02:00', offset = 120): FakeClock {
  let time = Date.parse(start);
  const ticks = new Set<() => void>();
  return {
    now: () => localIso(new Date(time), offset),
    every(_seconds, tick) {
      ticks.add(tick);
      return () => ticks.delete(tick);
    },
    idle: queueMicrotask,
    forward(minutes) {
      time += minutes * 60_000;
      for (const tick of ticks) tick();
    },
  };
}
