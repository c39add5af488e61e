import { expect } from 'vitest';
import { faultWalks } from '../../../engine/analysis/fault-walks.ts';
import { type PathLimits, walkPaths } from '../../../engine/paths/walk-paths.ts';
import {
  allWorlds,
  endByHand,
  ownNames,
  product,
  shortened,
  walkedByHand,
  worldsUnder,
} from '../../helpers/by-hand.ts';
import { randomTree } from '../../helpers/random-trees.ts';

/** Reach, outcomes and coverage of one random tree, as sets of bands and board by board. */
export function comparePaths(seed: number): void {
  const { tree, possible } = randomTree(seed);
  const paths = walkPaths(tree, possible);
  const byHand = walkedByHand(tree, possible);
  expect(paths.notExact).toEqual([]);
  expect([...paths.reached].sort()).toEqual([...byHand.reached].sort());
  for (const section of tree.sections) {
    if (section.kind !== 'check' || !byHand.reached.has(section.id)) continue;
    const found = paths.checks.get(section.id);
    const taken = section.outcomes.map((_, line) => byHand.taken.get(section.id)?.has(line) === true);
    expect(found?.taken, section.id).toEqual(taken);
    const names = ownNames(section);
    const boxes = found?.left.flatMap((box) => product(box)) ?? [];
    const left = boxes.map((world) => shortened(world, names));
    expect(new Set(left).size, 'boxes that do not overlap').toBe(left.length);
    expect(left.sort(), section.id).toEqual([...(byHand.left.get(section.id) ?? [])].sort());
  }
}

/** Where not everything is looked at, walks may be added but none is left out. */
export function comparePathsCutShort(seed: number, limits: PathLimits): void {
  const { tree, possible } = randomTree(seed);
  const paths = walkPaths(tree, possible, limits);
  const byHand = walkedByHand(tree, possible);
  for (const id of byHand.reached) expect(paths.reached.has(id), id).toBe(true);
  for (const [id, lines] of byHand.taken) {
    for (const line of lines) expect(paths.checks.get(id)?.taken[line], id).toBe(true);
    const section = tree.sections.find((each) => each.id === id);
    const names = section?.kind === 'check' ? ownNames(section) : [];
    const left = new Set(
      paths.checks
        .get(id)
        ?.left.flatMap(product)
        .map((world) => shortened(world, names)),
    );
    for (const world of byHand.left.get(id) ?? []) expect(left.has(world), `${id}: ${world}`).toBe(true);
  }
  const exact = walkPaths(tree, possible);
  if (paths.reached.size > exact.reached.size) expect(paths.notExact.length).toBeGreaterThan(0);
}

/** Where the walks of every fault of one random tree end, and how many of them. */
export function compareFaults(seed: number): void {
  const { tree, possible } = randomTree(seed);
  const walks = faultWalks(tree, () => possible);
  for (const fault of tree.faults) {
    const walk = walks.find((each) => each.fault === fault.id);
    const worlds = worldsUnder(fault, tree, possible);
    expect(walk === undefined, `${fault.id} can show the symptom`).toBe(worlds.length === 0);
    if (walk === undefined) continue;
    const ends = new Map<string, number>();
    for (const { world, share } of worlds) {
      const end = endByHand(fault, tree, world);
      ends.set(end, (ends.get(end) ?? 0) + share);
    }
    const arrived = [...ends].filter(([end]) => end.startsWith('arrived')).map(([, share]) => share);
    expect(walk.notFollowed).toBe(0);
    expect(walk.arrives).toBeCloseTo(arrived[0] ?? 0, 9);
    const astray = new Map<string, number>();
    for (const { how, path, share } of walk.astray) {
      const end = how === 'round' ? how : `${how} ${path.at(-1)}`;
      astray.set(end, (astray.get(end) ?? 0) + share);
    }
    const wrong = [...ends].filter(([end]) => !end.startsWith('arrived'));
    expect([...astray.keys()].sort()).toEqual(wrong.map(([end]) => end).sort());
    for (const [end, share] of wrong) expect(astray.get(end), end).toBeCloseTo(share, 9);
  }
}

/** How much a slice of random trees exercises: none of it may be missing. */
export function met(seeds: readonly number[]): Readonly<Record<string, number>> {
  const counts: Record<string, number> = {};
  const count = (what: string, times: number): void => {
    counts[what] = (counts[what] ?? 0) + times;
  };
  for (const seed of seeds) {
    const { tree, possible } = randomTree(seed);
    const paths = walkPaths(tree, possible);
    const walks = faultWalks(tree, () => possible);
    count('sections not reached', tree.sections.length - paths.reached.size);
    for (const { taken, left, known } of paths.checks.values()) {
      count('dead outcomes', taken.filter((each) => !each).length);
      count('uncovered checks', left.length > 0 ? 1 : 0);
      count('checks with something known', Object.keys(known).length > 0 ? 1 : 0);
    }
    for (const { arrives, astray } of walks) {
      count(arrives === 1 ? 'found' : arrives === 0 ? 'misled' : 'partly found', 1);
      for (const { how } of astray) count(how, 1);
    }
    count('boards', allWorlds(tree, possible).length);
  }
  return counts;
}
