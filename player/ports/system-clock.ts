import { localIso } from '../../engine/job/local-iso.ts';
import type { Clock } from './clock.ts';

export const systemClock: Clock = {
  now: () => localIso(new Date()),
  every(seconds, tick) {
    const timer = setInterval(tick, seconds * 1000);
    return () => clearInterval(timer);
  },
  idle(work) {
    // Not before the next frame; and soon all the same, where the browser is never idle or knows no such call.
    requestAnimationFrame(() => {
      if (typeof requestIdleCallback === 'undefined') setTimeout(work);
      else requestIdleCallback(work, { timeout: 200 });
    });
  },
};
