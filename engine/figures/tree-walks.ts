import { alikeBands } from '../analysis/alike-bands.ts';
import { FaultBoard, type Way } from '../cases/fault-board.ts';
import type { CompiledBoard } from '../model/compiled-board.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Fault } from '../model/fault.ts';
import { mends } from '../model/mends.ts';
import type { Drawn } from '../suspects/draws.ts';
import { faultStart } from './fault-start.ts';
import { type WalkStep, walkSteps } from './walk-minutes.ts';

/** One way along a tree on a board with one fault. */
export interface TreeWalk {
  /** Place of the fault in the tree's list. */
  readonly fault: number;
  /** In which share of the boards with this fault. */
  readonly share: number;
  /** It ends at a section of its fault. */
  readonly arrived: boolean;
  /** Section that it ends at. */
  readonly end: string;
  readonly steps: readonly WalkStep[];
  /** What came out on the way. */
  readonly drawn: Drawn;
}

/** Ways that are followed for one fault. The rest is left out, and the shares of those that were followed are raised to 1. */
const mostWalks = 3000;

/** Walks a tree as a board with each fault answers, in every way in which it can answer. A fault that cannot show the symptom has none.
 *  @param settings what is typed for them; what is not named has the value that the fault sets, or the usual one */
export function treeWalks(
  tree: CompiledTree,
  board: CompiledBoard | null,
  settings: Readonly<Record<string, string>> = {},
): readonly TreeWalk[] {
  const alike = alikeBands(tree);
  return tree.faults.flatMap((fault, place) => {
    const walks = faultStart(tree, fault, alike).starts.flatMap(({ drawn, share }) =>
      followed(new FaultBoard(tree, fault, settings, board, { drawn, alike }).walk(), share),
    );
    const sum = walks.reduce((all, { share }) => all + share, 0);
    return walks.map(({ end, share }) => walkOf(fault, place, end, share / sum));
  });
}

type End = Extract<Way, { readonly kind: 'end' }>;

function followed(first: Way, share: number): readonly { readonly end: End; readonly share: number }[] {
  const ends: { readonly end: End; readonly share: number }[] = [];
  const open: { readonly go: () => Way; readonly share: number }[] = [{ go: () => first, share }];
  for (let next = open.pop(); next !== undefined && ends.length < mostWalks; next = open.pop()) {
    const way = next.go();
    if (way.kind === 'end') ends.push({ end: way, share: next.share });
    else {
      const here = next.share;
      open.push(...way.ways.map((go, at) => ({ go, share: here * (way.shares[at] ?? 0) })));
    }
  }
  return ends;
}

function walkOf(fault: Fault, place: number, { session, drawn }: End, share: number): TreeWalk {
  const { section } = session.position;
  return {
    fault: place,
    share,
    arrived: mends(section, fault.id),
    end: section?.id ?? '',
    steps: walkSteps(session),
    drawn,
  };
}
