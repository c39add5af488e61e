import type { Setting } from '../../engine/model/setting.ts';
import { type Answer, entryFor, type Session } from '../../engine/run/index.ts';
import { settingText } from '../../engine/scale/index.ts';
import type { Understanding } from '../parts/understanding-line.tsx';

/** Noted at the start, the board altered since, or the note corrected. */
export type SettingHow = Extract<Answer, { readonly say: 'setting' }>['how'];

/** How the text in the field is understood as the value of a setting. */
export function understandingOfSetting(
  session: Session,
  setting: Setting,
  typed: string,
  how: SettingHow,
): Understanding {
  if (typed.trim() === '') return { state: 'empty', hint: 'As the jumpers and markings say' };
  const entry = entryFor(session, { say: 'setting', setting: setting.id, typed, how }, '');
  if (!entry.ok) return { state: 'refused', ...entry.refusal };
  const value = 'value' in entry.value ? entry.value.value : null;
  if (value === null) return { state: 'refused', text: 'A value is needed', offers: [] };
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
