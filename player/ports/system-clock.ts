import type { Clock } from './clock.ts';
import { isoWithOffset } from './iso-with-offset.ts';

export const systemClock: Clock = {
  now: () => isoWithOffset(new Date()),
  every(seconds, tick) {
    const timer = setInterval(tick, seconds * 1000);
    return () => clearInterval(timer);
  },
};
