import type { Fault } from '../model/fault.ts';
import type { PossibleBands } from '../suspects/possible-bands.ts';
import { type End, FaultSteps, isEnd, type Standing, type Step } from './fault-steps.ts';
import type { Astray, FaultWalk } from './fault-walk.ts';
import type { Ground } from './walk-ground.ts';

/** A standing that was walked on from. */
interface Node {
  readonly standing: Standing;
  readonly steps: readonly Step[];
  /** The nodes its steps lead to; null where a step ends. */
  readonly next: (Node | null)[];
  /** By end, the share of the walks from here that end so; null until it is known. */
  ends: ReadonlyMap<string, number> | null;
  /** The step taken next while the walk goes down. */
  at: number;
}

/** How many standings may still be walked on from; shared by the walks of a tree. */
export interface Budget {
  left: number;
}

/**
 * Walks a board with one fault through the tree, in every way it can answer. A board answers the same whenever it is asked the same, so whoever
 * comes back to a standing goes round for ever.
 * @param most standings of this fault
 * @returns null where the fault cannot show the symptom
 */
export function walkFault(
  ground: Ground,
  fault: Fault,
  possible: PossibleBands,
  budget: Budget,
  most = 5000,
): FaultWalk | null {
  const walk = new Walking(new FaultSteps(ground, fault, possible), budget, most);
  const first = ground.tree.sections[0]?.id ?? '';
  const coming = ground.tree.conditions.filter(({ id }) => ground.conditions.includes(id));
  const conditions = Object.fromEntries(coming.map(({ id, values }) => [id, values[0] ?? '']));
  const starts = walk.starts(first, conditions);
  if (starts.length === 0) return null;
  const home = ground.tree.sections.find(
    (section) => section.kind === 'fault' && section.remedies.some((remedy) => remedy.fault === fault.id),
  );
  const astray = walk.astray(starts, ground.leadingTo(home?.id ?? ''));
  const notFollowed = astray.reduce((sum, { how, share }) => sum + (how === 'not-followed' ? share : 0), 0);
  const lost = astray.reduce((sum, { share }) => sum + share, 0);
  return {
    fault: fault.id,
    arrives: lost < 1e-9 ? 1 : Math.max(0, lost > 1 - 1e-9 ? 0 : 1 - lost),
    notFollowed,
    astray: astray.filter(({ how }) => how !== 'not-followed'),
  };
}

interface Start {
  readonly share: number;
  readonly node: Node;
}

class Walking {
  readonly #steps: FaultSteps;
  readonly #budget: Budget;
  readonly #most: number;
  readonly #nodes = new Map<string, Node>();
  readonly #ends = new Map<string, End>();

  constructor(steps: FaultSteps, budget: Budget, most: number) {
    this.#steps = steps;
    this.#budget = budget;
    this.#most = most;
  }

  starts(section: string, conditions: Readonly<Record<string, string>>): readonly Start[] {
    return this.#steps.starts().map(({ drawn, share }) => {
      const { node } = this.#nodeAt({ section, drawn, conditions });
      this.#walkFrom(node);
      return { share, node };
    });
  }

  /** The ends other than the fault itself, heaviest first, each with its heaviest path. */
  astray(starts: readonly Start[], leadingHome: ReadonlySet<string>): readonly Astray[] {
    return [...this.#ends]
      .map(([key, end]) => ({ key, end, share: weight(starts, key) }))
      .filter(({ end, share }) => end.how !== 'arrived' && share > 1e-12)
      .sort((one, other) => other.share - one.share || (one.key < other.key ? -1 : 1))
      .map(({ key, end, share }) => {
        const walked = heaviest(starts, key);
        const parted = walked.findLast(({ section }) => leadingHome.has(section)) ?? walked[0];
        const path = once(
          walked.map(({ section }) => section),
          end,
        );
        return {
          how: end.how as Astray['how'],
          share,
          path,
          parted: parted?.section ?? end.section,
          by: parted?.by ?? [],
          held: end.held,
        };
      });
  }

  /** Depth first, without recursion: trees may be thousands of sections deep. */
  #walkFrom(start: Node): void {
    const way: Node[] = [start];
    for (let node = way.at(-1); node !== undefined; node = way.at(-1)) {
      const step = node.steps[node.at];
      if (node.ends !== null || step === undefined) {
        node.ends ??= this.#summed(node);
        way.pop();
        continue;
      }
      node.at += 1;
      if (isEnd(step.to)) {
        node.next.push(null);
        continue;
      }
      const { node: next, fresh } = this.#nodeAt(step.to);
      node.next.push(next);
      if (fresh) way.push(next);
    }
  }

  /** A node that is not summed yet when one behind it is, lies on the way down: the walk goes round. */
  #summed(node: Node): ReadonlyMap<string, number> {
    const ends = new Map<string, number>();
    for (const [at, { share, to }] of node.steps.entries()) {
      const next = node.next[at];
      const behind = isEnd(to)
        ? this.#endsAt(to)
        : (next?.ends ?? this.#endsAt({ how: 'round', section: to.section, held: null }));
      for (const [key, part] of behind) ends.set(key, (ends.get(key) ?? 0) + share * part);
    }
    return ends;
  }

  #endsAt(end: End): ReadonlyMap<string, number> {
    const key = keyOfEnd(end);
    this.#ends.set(key, end);
    return new Map([[key, 1]]);
  }

  #nodeAt(to: Standing): { readonly node: Node; readonly fresh: boolean } {
    const standing = this.#steps.settled(to);
    const key = JSON.stringify([
      standing.section,
      [...standing.drawn].sort(([one], [other]) => (one < other ? -1 : 1)),
      standing.conditions,
    ]);
    const known = this.#nodes.get(key);
    if (known !== undefined) return { node: known, fresh: false };
    const full = this.#nodes.size >= this.#most || this.#budget.left <= 0;
    this.#budget.left -= 1;
    const steps: readonly Step[] = full
      ? [{ share: 1, by: [], to: { how: 'not-followed', section: standing.section, held: null } }]
      : this.#steps.from(standing);
    const node: Node = { standing, steps, next: [], ends: null, at: 0 };
    this.#nodes.set(key, node);
    return { node, fresh: true };
  }
}

/** The path of a walk that goes round ends where it comes back for the first time. */
function once(path: readonly string[], { how, section }: End): readonly string[] {
  if (how !== 'round') return path;
  const again = path.indexOf(section, path.indexOf(section) + 1);
  return [...path.slice(0, again < 0 ? undefined : again), section];
}

const keyOfEnd = ({ how, section, held }: End): string => JSON.stringify([how, section, held]);

const weight = (starts: readonly Start[], key: string): number =>
  starts.reduce((sum, { share, node }) => sum + share * (node.ends?.get(key) ?? 0), 0);

interface Walked {
  readonly section: string;
  readonly by: Step['by'];
}

/** The path of the heaviest walk to one end. */
function heaviest(starts: readonly Start[], key: string): readonly Walked[] {
  const start = best(starts, ({ share, node }) => share * (node.ends?.get(key) ?? 0));
  const walked: Walked[] = [];
  const passed = new Set<Node>();
  for (let node = start?.node ?? null; node !== null && !passed.has(node); ) {
    passed.add(node);
    const { steps, next, standing }: Node = node;
    const step = best([...steps.entries()], ([at, { share, to }]) => {
      const behind = next[at];
      return share * (isEnd(to) ? Number(key === keyOfEnd(to)) : (behind?.ends?.get(key) ?? 0));
    });
    walked.push({ section: standing.section, by: step?.[1].by ?? [] });
    node = step === undefined ? null : (next[step[0]] ?? null);
  }
  return walked;
}

function best<Item>(items: readonly Item[], worth: (item: Item) => number): Item | undefined {
  let found: Item | undefined;
  let most = 0;
  for (const item of items) {
    const here = worth(item);
    if (here <= most) continue;
    found = item;
    most = here;
  }
  return found;
}
