import type { CompiledTree } from '../model/compiled-tree.ts';
import { waysIn } from './ways-in.ts';

export type MustPass = ReadonlyMap<string, ReadonlySet<string>>;

const known = new WeakMap<CompiledTree, MustPass>();

/** The sections that every walk has passed when it comes to a section, by its id; itself is not among them. They follow from
 *  the tree alone and are asked for at every step, so they are kept. */
export function mustPass(tree: CompiledTree): MustPass {
  const before = known.get(tree);
  if (before !== undefined) return before;
  const ways = waysIn(tree);
  const passed = new Map<string, ReadonlySet<string>>();
  // Sections that no walk has come to yet say nothing; every round takes something away, until nothing changes.
  for (let changed = true; changed; ) {
    changed = false;
    for (const { id } of tree.sections) {
      const next = passedAt(ways.get(id) ?? [], passed);
      if (next === null || next.size === passed.get(id)?.size) continue;
      passed.set(id, next);
      changed = true;
    }
  }
  known.set(tree, passed);
  return passed;
}

function passedAt(
  ways: readonly { readonly from: { readonly id: string } | null }[],
  passed: MustPass,
): ReadonlySet<string> | null {
  let common: ReadonlySet<string> | null = null;
  for (const { from } of ways) {
    if (from === null) return new Set();
    const before = passed.get(from.id);
    if (before === undefined) continue;
    const through = new Set([...before, from.id]);
    common = common === null ? through : both(common, through);
  }
  return common;
}

const both = (a: ReadonlySet<string>, b: ReadonlySet<string>): ReadonlySet<string> =>
  new Set([...a].filter((id) => b.has(id)));
