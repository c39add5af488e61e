import type { LinkedTree } from '../link/linked-tree.ts';
import type { Section } from '../model/section.ts';
import { targetsOf } from '../paths/targets-of.ts';

/** Which section leads where, by id. */
export const waysAmong = (sections: readonly Section[]): ReadonlyMap<string, readonly string[]> =>
  new Map(sections.map((section) => [section.id, targetsOf(section)]));

const known = new WeakMap<LinkedTree, ReadonlyMap<string, readonly string[]>>();

/** The same for a whole tree. Several rules ask for it. */
export function waysOf(tree: LinkedTree): ReadonlyMap<string, readonly string[]> {
  const found = known.get(tree) ?? waysAmong(tree.sections.map(({ section }) => section));
  known.set(tree, found);
  return found;
}
