import type { Present } from '../model/present.ts';
import type { Reading } from '../model/reading.ts';
import type { Setting } from '../model/setting.ts';
import { settingText } from './setting-text.ts';
import { settingsOf } from './settings-of.ts';

/** A setting that a reading is judged by, and what it is now. */
export interface Because {
  readonly setting: string;
  /** What the setting is, in the tree's words. */
  readonly is: string;
  /** `66 MHz`; null where it is not known. */
  readonly value: string | null;
}

/** @param declared the tree's settings by id */
export function expectedBecause(
  reading: Reading,
  present: Present,
  declared: ReadonlyMap<string, Setting>,
): readonly Because[] {
  return settingsOf(reading).map((setting) => {
    const value = present.settings.get(setting) ?? null;
    return {
      setting,
      is: declared.get(setting)?.is ?? setting,
      value: value === null ? null : settingText(value),
    };
  });
}
