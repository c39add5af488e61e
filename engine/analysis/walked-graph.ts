import { type FaultSteps, isEnd, type Standing, type Step } from './fault-steps.ts';

/** A standing, and where its steps lead. */
export interface Node {
  readonly standing: Standing;
  readonly steps: readonly Step[];
  /** One for each step: the node behind it, or null where the step is an end. */
  readonly next: (Node | null)[];
}

export interface Start {
  readonly share: number;
  readonly node: Node;
}

/** How many standings may still be walked on from; shared by the walks of a tree. */
export interface Budget {
  left: number;
}

/**
 * Every standing that walks come to, nearest first. Standings in which the same is still to be decided are one, however they were reached.
 * @param most standings; those beyond have one step, to the end `not-followed`
 */
export function walkedGraph(
  steps: FaultSteps,
  section: string,
  conditions: Readonly<Record<string, string>>,
  budget: Budget,
  most: number,
): readonly Start[] {
  const nodes = new Map<string, Node>();
  const nodeAt = (to: Standing): Node => {
    const standing = steps.settled(to);
    const key = keyOf(standing);
    const known = nodes.get(key);
    if (known !== undefined) return known;
    const full = nodes.size >= most || budget.left <= 0;
    if (!full) budget.left -= 1;
    const node: Node = { standing, steps: full ? [notFollowed(standing)] : steps.from(standing), next: [] };
    nodes.set(key, node);
    return node;
  };
  const starts = steps
    .starts()
    .map(({ drawn, share }) => ({ share, node: nodeAt({ section, drawn, conditions }) }));
  for (const { steps: ways, next } of nodes.values())
    for (const { to } of ways) next.push(isEnd(to) ? null : nodeAt(to));
  return starts;
}

/** Names hold no line ends. */
const keyOf = ({ section, drawn, conditions }: Standing): string =>
  [section, ...linesOf(drawn), ...linesOf(Object.entries(conditions))].join('\n');

const linesOf = (pairs: Iterable<readonly [string, string]>): readonly string[] =>
  Array.from(pairs, ([name, value]) => `${name}\n${value}`).sort();

const notFollowed = ({ section }: Standing): Step => ({
  share: 1,
  by: [],
  to: { how: 'not-followed', section, held: null },
});
