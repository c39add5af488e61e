import type { Taken } from '../../engine/model/refusal.ts';
import type { Setting, SettingValue } from '../../engine/model/setting.ts';
import { type Answer, entryFor, type Session } from '../../engine/run/index.ts';

/** Noted at the start, the board altered since, or the note corrected. */
export type SettingHow = Extract<Answer, { readonly say: 'setting' }>['how'];

/** What is typed, as a value of this setting: the value itself, or the jumper positions that make it. */
export function settingValue(
  session: Session,
  setting: Setting,
  typed: string,
  how: SettingHow,
): Taken<SettingValue> {
  const entry = entryFor(session, { say: 'setting', setting: setting.id, typed, how }, '');
  if (!entry.ok) return entry;
  const value = 'value' in entry.value ? entry.value.value : null;
  return value === null || typeof value === 'undefined'
    ? { ok: false, refusal: { text: 'A value is needed', offers: [] } }
    : { ok: true, value };
}
