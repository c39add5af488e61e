import { dimensionOf, fits } from '../formula/index.ts';
import type { Setting, SettingValue } from '../model/setting.ts';

/** Whether a value of a board sheet can be a value of this setting. */
export function suitsSetting(setting: Setting, value: SettingValue): boolean {
  if (setting.kind === 'options')
    return typeof value === 'string' && setting.options.some(({ name }) => name === value);
  return typeof value !== 'string' && fits(dimensionOf(setting.unit), dimensionOf(value.unit));
}
