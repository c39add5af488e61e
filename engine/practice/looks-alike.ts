import type { CompiledTree } from '../model/compiled-tree.ts';
import { shownBands } from '../suspects/shown-bands.ts';

const known = new WeakMap<CompiledTree, ReadonlyMap<string, string>>();

/** A name for what each fault shows in everything that can be taken: the same for faults that no check tells apart. */
export function looksOf(tree: CompiledTree): ReadonlyMap<string, string> {
  const before = known.get(tree);
  if (before !== undefined) return before;
  const readings = tree.readings.filter(({ call }) => !call);
  const looks = new Map(
    tree.faults.map((fault) => {
      const shown = [...shownBands(tree, fault, readings)].map(([id, { how, shares }]) => [
        id,
        how === 'free',
        shares
          .filter(({ share }) => share > 0)
          .map(({ band, share }) => `${band} ${share.toFixed(9)}`)
          .sort(),
      ]);
      return [fault.id, JSON.stringify([fault.comes, shown])] as const;
    }),
  );
  known.set(tree, looks);
  return looks;
}
