import { localIso } from '../../engine/job/local-iso.ts';
import type { Clock } from './clock.ts';

export const systemClock: Clock = {
  now: () => localIso(new Date()),
  every(seconds, tick) {
    const timer = setInterval(tick, seconds * 1000);
    return () => clearInterval(timer);
  },
};
