import type { CompiledTree } from '../model/compiled-tree.ts';

/** Every choice of one option for each setting that has options. */
export function everySetting(
  tree: Pick<CompiledTree, 'settings'>,
): readonly Readonly<Record<string, string>>[] {
  return tree.settings
    .filter((setting) => setting.kind === 'options')
    .reduce<Record<string, string>[]>(
      (all, { id, options }) => all.flatMap((one) => options.map(({ name }) => ({ ...one, [id]: name }))),
      [{}],
    );
}
