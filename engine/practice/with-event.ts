import type { Drill, DrillEvent } from './drill.ts';

/** What an event took. */
interface Took {
  readonly minutes?: number;
  readonly wait?: number;
}

/** The drill after one more event. */
export function withEvent(drill: Drill, event: DrillEvent, { minutes = 0, wait = 0 }: Took = {}): Drill {
  const spent = drill.minutes + minutes;
  return {
    ...drill,
    events: [...drill.events, { ...event, minute: spent }],
    minutes: spent,
    waited: drill.waited + wait,
  };
}
