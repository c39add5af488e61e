import type { Setting } from '../../engine/model/setting.ts';
import type { Session } from '../../engine/run/index.ts';
import { settingText } from '../../engine/scale/index.ts';
import type { Understanding } from '../parts/understanding-line.tsx';
import { type SettingHow, settingValue } from './setting-value.ts';

/** How the text in the field is understood as the value of a setting. */
export function understandingOfSetting(
  session: Session,
  setting: Setting,
  typed: string,
  how: SettingHow,
): Understanding {
  if (typed.trim() === '') return { state: 'empty', hint: 'As the jumpers and markings say' };
  const taken = settingValue(session, setting, typed, how);
  if (!taken.ok) return { state: 'refused', ...taken.refusal };
  const { value } = taken;
  return {
    state: 'understood',
    value: settingText(value),
    bands: typeof value === 'string' ? [value] : [],
    normal: null,
    fraction: null,
    remarks: [],
    leads: [],
  };
}
