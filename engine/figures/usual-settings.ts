import type { CompiledTree } from '../model/compiled-tree.ts';
import { settingText } from '../scale/index.ts';

/** The settings that figures are worked out at, as text: the usual value of each; where a setting with options has none, its first option. */
export const usualSettings = ({
  settings,
}: Pick<CompiledTree, 'settings'>): Readonly<Record<string, string>> =>
  Object.fromEntries(
    settings.flatMap((setting) => {
      if (setting.usual !== null) return [[setting.id, settingText(setting.usual)] as const];
      const [first] = setting.kind === 'options' ? setting.options : [];
      return first === undefined ? [] : [[setting.id, first.name] as const];
    }),
  );
