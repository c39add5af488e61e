import { jumpersOf } from '../../board/jumper-rows.ts';
import type { Setting } from '../../model/setting.ts';
import { wrap } from '../../prose/plain-text.ts';
import type { Session } from '../../run/index.ts';
import { settingText } from '../../scale/index.ts';

/** A setting that is asked: its choices or its unit, what it usually is, and the jumpers that would tell it. */
export function settingLines({ board }: Session, setting: Setting, width: number): readonly string[] {
  const form =
    setting.kind === 'options'
      ? `: ${setting.options.map(({ name }) => name).join(', ')}?`
      : `, in ${setting.unit}?`;
  const jumpers = (board?.tables ?? []).filter((table) => table.setting === setting.id).flatMap(jumpersOf);
  const hints = [
    ...(setting.usual === null ? [] : [`usually ${settingText(setting.usual)}`]),
    ...(jumpers.length === 0 ? [] : [`the positions of ${jumpers.join(', ')} do as well`]),
  ];
  const lines = [wrap(`${setting.is}${form} (? if not known)`, width), ...hints.map((hint) => `  ${hint}`)];
  return [lines.join('\n')];
}
