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
      const change = minutesTo(wantedBy(check), from) ?? 0;
      const changeNow = minutesTo(wantedBy(check), now) ?? 0;
      return minutesOf({ minutes: check.minutes - changeNow + change, wait: check.wait });
    },
    after: (check, from) => {
      const wanted = wantedBy(check);
      return Object.entries(wanted).every(([id, value]) => from[id] === value)
        ? from
        : { ...from, ...wanted };
    },
  };
}

const wantedBy = ({ wants, reading }: Check): Conditions => wants ?? reading.when;
