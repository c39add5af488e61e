import type { Arranging, Conditions } from './arranging.ts';
import type { Check } from './check.ts';
import { minutesOf } from './minutes-of.ts';

/** Minutes of checks that are taken one after the other: what the first has changed need not be changed again. */
export interface Costs {
  readonly start: Conditions;
  readonly minutes: (check: Check, from: Conditions) => number;
  readonly after: (check: Check, from: Conditions) => Conditions;
}

/** Without `arranging` each check takes what it takes now. */
export function costsOf(arranging: Arranging | null): Costs {
  if (arranging === null) return { start: {}, minutes: minutesOf, after: (_check, from) => from };
  const { now, minutesTo } = arranging;
  return {
    start: now,
    minutes(check, from) {
      if (from === now) return minutesOf(check);
      const { when } = check.reading;
      const change = minutesTo(when, from) ?? 0;
      const changeNow = minutesTo(when, now) ?? 0;
      return minutesOf({ minutes: check.minutes - changeNow + change, wait: check.wait });
    },
    after: ({ reading }, from) =>
      Object.entries(reading.when).every(([id, value]) => from[id] === value)
        ? from
        : { ...from, ...reading.when },
  };
}
