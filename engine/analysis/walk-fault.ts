import type { Fault } from '../model/fault.ts';
import { mends } from '../model/mends.ts';
import type { PossibleBands } from '../suspects/possible-bands.ts';
import { type End, FaultSteps, isEnd, type Step } from './fault-steps.ts';
import type { Astray, FaultWalk } from './fault-walk.ts';
import type { Ground } from './walk-ground.ts';
import { keyOfEnd, type WalkedEnds, walkedEnds } from './walked-ends.ts';
import { type Budget, type Node, type Start, walkedGraph } from './walked-graph.ts';

/** Standings that the walks of one fault may take. */
const mostStandings = 2000;

/**
 * Walks a board with one fault through the tree, in every way it can answer.
 * @returns null where the fault cannot show the symptom
 */
export function walkFault(
  ground: Ground,
  fault: Fault,
  possible: PossibleBands,
  budget: Budget,
): FaultWalk | null {
  const steps = new FaultSteps(ground, fault, possible);
  const first = ground.tree.sections[0]?.id ?? '';
  const coming = ground.tree.conditions.filter(({ id }) => ground.conditions.includes(id));
  const conditions = Object.fromEntries(coming.map(({ id, values }) => [id, values[0] ?? '']));
  const starts = walkedGraph(steps, first, conditions, budget, mostStandings);
  if (starts.length === 0) return null;
  const home = ground.tree.sections.find((section) => mends(section, fault.id));
  const wrong = wrongEnds(starts, walkedEnds(starts), ground.leadingTo(home?.id ?? ''));
  const astray = wrong.flatMap(({ how, ...rest }) => (how === 'not-followed' ? [] : [{ how, ...rest }]));
  const lost = sumOf(wrong);
  return {
    fault: fault.id,
    arrives: lost < 1e-9 ? 1 : lost > 1 - 1e-9 ? 0 : 1 - lost,
    notFollowed: lost < 1e-9 ? 0 : Math.max(0, lost - sumOf(astray)),
    astray,
  };
}

const sumOf = (ends: readonly { readonly share: number }[]): number =>
  ends.reduce((sum, { share }) => sum + share, 0);

type WrongEnd = Omit<Astray, 'how'> & { readonly how: Exclude<End['how'], 'arrived'> };

/** The ends other than the fault itself, heaviest first, each with its heaviest path. */
function wrongEnds(
  starts: readonly Start[],
  { ends, shares }: WalkedEnds,
  leadingHome: ReadonlySet<string>,
): readonly WrongEnd[] {
  const shareOf = (node: Node, key: string): number => shares.get(node)?.get(key) ?? 0;
  return [...ends]
    .flatMap(([key, end]) => {
      const share = starts.reduce((sum, start) => sum + start.share * shareOf(start.node, key), 0);
      const { how } = end;
      return how === 'arrived' || share < 1e-12 ? [] : [{ key, end, how, share }];
    })
    .sort((one, other) => other.share - one.share || (one.key < other.key ? -1 : 1))
    .map(({ key, end, how, share }) => {
      const walked = heaviest(starts, key, shareOf);
      const parted = walked.findLast(({ section }) => leadingHome.has(section)) ?? walked[0];
      const sections = walked.map(({ section }) => section);
      return {
        how,
        share,
        path: once(sections, end),
        parted: parted?.section ?? end.section,
        by: parted?.by ?? [],
        held: end.held,
      };
    });
}

/** The path of a walk that goes round ends where it comes back for the first time. */
function once(path: readonly string[], { how, section }: End): readonly string[] {
  if (how !== 'round') return path;
  const again = path.indexOf(section, path.indexOf(section) + 1);
  return [...path.slice(0, again < 0 ? undefined : again), section];
}

interface Walked {
  readonly section: string;
  readonly by: Step['by'];
}

/** The path of the heaviest walk to one end. */
function heaviest(
  starts: readonly Start[],
  key: string,
  shareOf: (node: Node, key: string) => number,
): readonly Walked[] {
  const start = best(starts, ({ share, node }) => share * shareOf(node, key));
  const walked: Walked[] = [];
  const passed = new Set<Node>();
  for (let node = start?.node ?? null; node !== null && !passed.has(node); ) {
    passed.add(node);
    const { steps, next, standing }: Node = node;
    const step = best([...steps.entries()], ([at, { share, to }]) => {
      const behind = next[at];
      return share * (behind == null ? Number(isEnd(to) && key === keyOfEnd(to)) : shareOf(behind, key));
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
