import type { LinkedTree } from '../link/linked-tree.ts';
import { possibleOnAnyBoard } from '../suspects/possible-on-any-board.ts';
import type { Paths } from './paths.ts';
import { walkPaths } from './walk-paths.ts';
import type { Walkable } from './walkable.ts';

/** A linked tree as something that can be walked. */
export const walkableOf = ({ facts, sections }: LinkedTree): Walkable => ({
  given: facts.given,
  conditions: facts.conditions,
  settings: facts.settings,
  readings: facts.readings,
  faults: facts.faults,
  sections: sections.map(({ section }) => section),
});

const known = new WeakMap<LinkedTree, Paths | null>();

/** The walks through a tree; null while some of its sections do not lead anywhere yet. Several rules ask for them. */
export function pathsOf(tree: LinkedTree): Paths | null {
  const before = known.get(tree);
  if (before !== undefined) return before;
  const paths = canBeWalked(tree) ? walkPaths(walkableOf(tree), possibleOnAnyBoard(tree.facts)) : null;
  known.set(tree, paths);
  return paths;
}

const canBeWalked = ({ open, sections }: LinkedTree): boolean =>
  open.size === 0 && sections.every(({ sound }) => sound);
