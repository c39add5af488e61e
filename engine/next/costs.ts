import type { Arranging, Conditions } from './arranging.ts';
import type { Check } from './check.ts';
import { minutesOf } from './minutes-of.ts';

/** Minutes of checks that are taken one after the other: what the first has changed need not be changed again. */
export interface Costs {
  readonly start: Conditions;
  /** @param from `start`, or what `after` gave */
  readonly minutes: (check: Check, from: Conditions) => number;
  readonly after: (check: Check, from: Conditions) => Conditions;
}

/** Without `arranging` each check takes what it takes now. */
export function costsOf(arranging: Arranging | null): Costs {
  if (arranging === null) return { start: {}, minutes: minutesOf, after: (_check, from) => from };
  const { now, minutesTo } = arranging;
  const states = new Map<string, Conditions>();
  const stateOf = (conditions: Conditions): Conditions => {
    const key = JSON.stringify(Object.entries(conditions).toSorted(([a], [b]) => (a < b ? -1 : 1)));
    const known = states.get(key) ?? conditions;
    states.set(key, known);
    return known;
  };
  const start = stateOf(now);
  const minutesBetween = (check: Check, from: Conditions): number => {
    const change = minutesTo(wantedBy(check), from) ?? 0;
    const changeNow = minutesTo(wantedBy(check), start) ?? 0;
    return minutesOf({ minutes: check.minutes - changeNow + change, wait: check.wait });
  };
  const conditionsAfter = (check: Check, from: Conditions): Conditions => {
    const wanted = Object.entries(wantedBy(check));
    return wanted.every(([id, value]) => from[id] === value)
      ? from
      : stateOf({ ...from, ...Object.fromEntries(wanted) });
  };
  return { start, minutes: kept(minutesBetween), after: kept(conditionsAfter) };
}

const wantedBy = ({ wants, reading }: Check): Conditions => wants ?? reading.when;

/** There are few conditions that a board can be in, and they are asked for again and again. */
function kept<Value>(
  make: (check: Check, from: Conditions) => Value,
): (check: Check, from: Conditions) => Value {
  const known = new Map<Conditions, Map<Check, Value>>();
  return (check, from) => {
    const ofState = known.get(from) ?? new Map<Check, Value>();
    known.set(from, ofState);
    const before = ofState.get(check);
    if (before !== undefined) return before;
    const made = make(check, from);
    ofState.set(check, made);
    return made;
  };
}
