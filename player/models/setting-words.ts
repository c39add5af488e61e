import type { Setting } from '../../engine/model/setting.ts';
import type { Session } from '../../engine/run/index.ts';
import { settingText } from '../../engine/scale/index.ts';

/** A setting's value on this board, `not known`, or null while it has not been asked. */
export function settingWords(session: Session, id: string): string | null {
  const value = session.settings.get(id);
  if (value === undefined) return null;
  return value === null ? 'not known' : settingText(value);
}

/** What this setting usually is, as text that can be entered; null where there is no usual value. */
export function usualWords(setting: Setting): string | null {
  return setting.usual === null ? null : settingText(setting.usual);
}
