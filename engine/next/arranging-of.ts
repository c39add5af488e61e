import type { BoardCondition } from '../model/compiled-tree.ts';
import type { Section } from '../model/section.ts';
import type { Arranging, Conditions } from './arranging.ts';

interface Arrangeable {
  readonly conditions: readonly BoardCondition[];
  readonly sections: readonly Section[];
}

interface Work {
  readonly sets: Conditions;
  readonly minutes: number;
}

/** Minutes of a change that no task of the tree makes or undoes. */
const byHand = 2;

/** What changes of condition take, by the tree's own tasks: the least minutes of those that together bring about what is wanted
 *  and nothing that is unwanted. Where none of them sets a condition so, it takes as long as the task that sets it otherwise;
 *  where no task knows it, two minutes. A condition that the tree does not have cannot be brought about. */
export function arrangingOf({ conditions, sections }: Arrangeable, now: Conditions): Arranging {
  const works = sections.flatMap((section) =>
    section.kind === 'task' && Object.keys(section.sets).length > 0
      ? [{ sets: section.sets, minutes: section.minutes + section.wait }]
      : [],
  );
  const values = new Map(conditions.map((condition) => [condition.id, condition.values]));
  const known = new Map<string, number | null>();
  const minutesTo: Arranging['minutesTo'] = (wanted, from) => {
    const changes = Object.entries(wanted).filter(([id, value]) => from[id] !== value);
    if (changes.length === 0) return 0;
    const key = JSON.stringify([changes, wanted]);
    const before = known.get(key);
    if (before !== undefined) return before;
    const possible = changes.every(([id, value]) => values.get(id)?.includes(value));
    const minutes = possible ? leastMinutes(works, changes, wanted) : null;
    known.set(key, minutes);
    return minutes;
  };
  return { now, minutesTo };
}

/** The cheapest cover: `cheapest[made]` for the changes whose bits are set in `made`. */
function leastMinutes(
  works: readonly Work[],
  changes: readonly (readonly [string, string])[],
  wanted: Conditions,
): number {
  const all = 2 ** changes.length - 1;
  const helping = works.filter(({ sets }) =>
    Object.entries(sets).every(([id, value]) => (wanted[id] ?? value) === value),
  );
  const steps = [
    ...helping.map(({ sets, minutes }) => ({
      minutes,
      makes: changes.reduce((bits, [id, value], at) => (sets[id] === value ? bits | (1 << at) : bits), 0),
    })),
    ...changes.flatMap(([id, value], at) =>
      helping.some(({ sets }) => sets[id] === value)
        ? []
        : [{ minutes: otherwise(works, id), makes: 1 << at }],
    ),
  ];
  const cheapest = Array<number>(all + 1).fill(Number.POSITIVE_INFINITY);
  cheapest[0] = 0;
  for (let made = 0; made < all; made += 1) {
    const soFar = cheapest[made] as number;
    for (const { minutes, makes } of steps) {
      cheapest[made | makes] = Math.min(cheapest[made | makes] as number, soFar + minutes);
    }
  }
  return cheapest[all] as number;
}

function otherwise(works: readonly Work[], id: string): number {
  const alike = works.filter(({ sets }) => sets[id] !== undefined).map(({ minutes }) => minutes);
  return alike.length === 0 ? byHand : Math.min(...alike);
}
