import type { CompiledTree } from '../model/compiled-tree.ts';
import type { TreeWalk } from './tree-walks.ts';
import { type Minutes, total } from './walk-minutes.ts';

/** What it takes to come to a fault along a tree. */
export interface Along {
  readonly expected: Minutes;
  readonly worst: Minutes;
  /** In which share of the cases the walk comes to the right section. 0..1. */
  readonly arrives: number;
}

export interface FaultAlong extends Along {
  readonly fault: string;
  readonly is: string;
  /** How likely it is once the symptom is seen. 0..1. */
  readonly share: number;
}

export interface TreeAlong extends Along {
  readonly faults: readonly FaultAlong[];
}

export function alongTree(
  { faults }: CompiledTree,
  shares: readonly number[],
  walks: readonly TreeWalk[],
): TreeAlong {
  const each = faults.map((fault, place) => ({
    fault: fault.id,
    is: fault.is,
    share: shares[place] ?? 0,
    ...alongOf(walks.filter((walk) => walk.fault === place)),
  }));
  const mean = (of: (along: Along) => number): number =>
    each.reduce((sum, along) => sum + along.share * of(along), 0);
  return {
    expected: {
      handsOn: mean(({ expected }) => expected.handsOn),
      waiting: mean(({ expected }) => expected.waiting),
    },
    worst: longest(each.filter(({ share }) => share > 0).map(({ worst }) => worst)),
    arrives: whole(mean(({ arrives }) => arrives)),
    faults: each,
  };
}

function alongOf(walks: readonly TreeWalk[]): Along {
  const taken = walks.map(({ share, steps, arrived }) => ({
    share,
    arrived,
    handsOn: steps.reduce((sum, step) => sum + step.handsOn, 0),
    waiting: steps.reduce((sum, step) => sum + step.waiting, 0),
  }));
  const mean = (of: (walk: (typeof taken)[number]) => number): number =>
    taken.reduce((sum, walk) => sum + walk.share * of(walk), 0);
  return {
    expected: { handsOn: mean(({ handsOn }) => handsOn), waiting: mean(({ waiting }) => waiting) },
    worst: longest(taken),
    arrives: whole(mean(({ arrived }) => Number(arrived))),
  };
}

/** All of them are all, whatever was lost in adding up. */
const whole = (share: number): number => (share > 1 - 1e-12 ? 1 : share);

/** The one that takes longest on the clock. */
function longest(all: readonly Minutes[]): Minutes {
  const [first] = all.toSorted((one, other) => total(other) - total(one));
  return { handsOn: first?.handsOn ?? 0, waiting: first?.waiting ?? 0 };
}
