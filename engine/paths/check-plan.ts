import type { CheckSection } from '../model/section.ts';
import type { Demand } from './cells.ts';
import { demandsOfDerived } from './derived-cells.ts';
import { namesAt } from './live-names.ts';
import { type Name, type Names, setOf } from './names.ts';

/** A check made ready for being met with many sets of known bands. */
export interface CheckPlan {
  /** Every name that matters here: what is known on entering, what is looked at, and what that rests on. */
  readonly scope: readonly Name[];
  readonly all: readonly bigint[];
  /** What the derived readings of the scope leave possible: of each list one demand holds. */
  readonly constraints: readonly (readonly Demand[])[];
  /** For each outcome what it asks: null for everything, `unread` where a reading could not be taken. */
  readonly lines: readonly (Demand | null | 'unread')[];
  /** Places in the scope of the names that the check itself looks at. */
  readonly looked: readonly number[];
  /** Derived readings whose inputs have too many combinations to be looked through. */
  readonly unlimited: readonly string[];
}

export function checkPlan(check: CheckSection, live: readonly Name[], names: Names): CheckPlan {
  const looked = namesAt(check);
  const wanted = new Set([...live.map(({ id }) => id), ...looked]);
  for (const id of wanted) for (const input of names.byId.get(id)?.derived?.inputs ?? []) wanted.add(input);
  const scope = names.list.filter(({ id }) => wanted.has(id));
  const places = new Map(scope.map(({ id }, place) => [id, place]));
  const kin = new Set(looked.flatMap((id) => names.families.get(id) ?? []));
  const derived = scope.filter((name) => name.derived !== null && kin.has(name.id));
  const limits = derived.map((name) => ({ name, demands: demandsOfDerived(name, scope, names) }));
  return {
    scope,
    all: scope.map((name) => name.all),
    constraints: limits.flatMap(({ demands }) => (demands === null ? [] : [demands])),
    unlimited: limits.flatMap(({ name, demands }) => (demands === null ? [name.id] : [])),
    looked: looked.flatMap((id) => places.get(id) ?? []),
    lines: check.outcomes.map(({ condition }) => {
      if (condition.kind === 'unread') return 'unread';
      if (condition.kind === 'otherwise') return null;
      return Object.entries(condition.bands).flatMap(([id, bands]) => {
        const place = places.get(id);
        const name = names.byId.get(id);
        return place === undefined || name === undefined ? [] : [{ place, set: setOf(name, bands) }];
      });
    }),
  };
}
